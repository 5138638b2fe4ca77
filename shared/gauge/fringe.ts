/**
 * The fringe: what hangs of each cord below the last row, along an outline. Each shape but the one drawn by hand is a
 * curve from the middle of the hanging (0) to its edge (1), and tells how much of the way from long to short a cord
 * lies there.
 */
import type { Fringe } from '../design/schema.ts';

const towardsShort: Record<Exclude<Fringe['shape'], 'by-hand'>, (fromMiddle: number) => number> = {
  straight: () => 0,
  v: (t) => t,
  'inverted-v': (t) => 1 - t,
  /** A parabola, as a swag hangs: flat in the middle, steep at the edges. */
  curve: (t) => t * t,
};

/**
 * Length of the fringe for each of `columns` cords, left to right. The outline is the same on both sides, unless it
 * is drawn by hand: then its lengths are spread over the cords there are, so that it fits a chart of any width.
 */
export function fringeMm(columns: number, { shape, longMm, shortMm, byHandMm }: Fringe): number[] {
  if (shape === 'by-hand') return spread(byHandMm ?? [longMm], columns);
  const middle = (columns - 1) / 2;
  // Of an even number of cords two are in the middle, and both of them lie at 0.
  const nearest = middle % 1;
  return Array.from({ length: columns }, (_, column) => {
    const reach = middle - nearest;
    const t = reach === 0 ? 0 : (Math.abs(column - middle) - nearest) / reach;
    return longMm - (longMm - shortMm) * towardsShort[shape](t);
  });
}

/** The fringe of these lengths, one a cord from left to right; its longest and shortest are told beside them. */
export function fringeByHand(byHandMm: readonly number[]): Fringe {
  const longMm = byHandMm.reduce((a, b) => Math.max(a, b), 0);
  const shortMm = byHandMm.reduce((a, b) => Math.min(a, b), longMm);
  return { shape: 'by-hand', longMm, shortMm, byHandMm: [...byHandMm] };
}

/** `lengthsMm` as `columns` lengths: the outer ones stay, those between lie on the lines from one to the next. */
function spread(lengthsMm: readonly number[], columns: number): number[] {
  const last = lengthsMm.length - 1;
  return Array.from({ length: columns }, (_, column) => {
    const at = columns === 1 ? last / 2 : (column * last) / (columns - 1);
    const left = Math.floor(at);
    const fromMm = lengthsMm[left]!;
    const toMm = lengthsMm[Math.min(left + 1, last)]!;
    return fromMm + (toMm - fromMm) * (at - left);
  });
}
