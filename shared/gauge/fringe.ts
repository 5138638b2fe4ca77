/**
 * The fringe: what hangs of each cord below the last row, along an outline. Each shape is a curve from the middle
 * of the hanging (0) to its edge (1), and tells how much of the way from long to short a cord lies there.
 */
import type { Fringe } from '../design/schema.ts';

const towardsShort: Record<Fringe['shape'], (fromMiddle: number) => number> = {
  straight: () => 0,
  v: (t) => t,
  'inverted-v': (t) => 1 - t,
  /** A parabola, as a swag hangs: flat in the middle, steep at the edges. */
  curve: (t) => t * t,
};

/** Length of the fringe for each of `columns` cords, left to right. The outline is the same on both sides. */
export function fringeMm(columns: number, { shape, longMm, shortMm }: Fringe): number[] {
  const middle = (columns - 1) / 2;
  // Of an even number of cords two are in the middle, and both of them lie at 0.
  const nearest = middle % 1;
  return Array.from({ length: columns }, (_, column) => {
    const reach = middle - nearest;
    const t = reach === 0 ? 0 : (Math.abs(column - middle) - nearest) / reach;
    return longMm - (longMm - shortMm) * towardsShort[shape](t);
  });
}
