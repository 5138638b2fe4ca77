/**
 * Which length of a fringe hangs in the middle and which at the edges, and what becomes of it when one of them is
 * dragged. Of the longest and the shortest, neither passes the other.
 */
import type { Fringe } from '../../../shared/design/schema.ts';

export type FringeEnd = 'middle' | 'edge';

type Shape = Exclude<Fringe['shape'], 'by-hand'>;

const lengths: Record<Shape, Partial<Record<FringeEnd, 'longMm' | 'shortMm' | 'both'>>> = {
  straight: { middle: 'both' },
  v: { middle: 'longMm', edge: 'shortMm' },
  'inverted-v': { middle: 'shortMm', edge: 'longMm' },
  curve: { middle: 'longMm', edge: 'shortMm' },
};

/** Longest fringe that can be set here, in mm. */
export const longestFringeMm = 3000;

/** The length that hangs at this end, in mm; null where the shape has no such end. */
export function lengthAt(fringe: Fringe, end: FringeEnd): number | null {
  if (fringe.shape === 'by-hand') return null;
  const which = lengths[fringe.shape][end];
  if (!which) return null;
  return which === 'both' ? fringe.longMm : fringe[which];
}

/** The fringe with another length at one of its ends, to the whole mm. */
export function withLengthAt(fringe: Fringe, end: FringeEnd, wantedMm: number): Fringe {
  const which = fringe.shape === 'by-hand' ? undefined : lengths[fringe.shape][end];
  const mm = soundLength(wantedMm);
  switch (which) {
    case undefined:
      return fringe;
    case 'both':
      return { ...fringe, longMm: mm, shortMm: mm };
    case 'longMm':
      return { ...fringe, longMm: Math.max(mm, fringe.shortMm) };
    case 'shortMm':
      return { ...fringe, shortMm: Math.min(mm, fringe.longMm) };
  }
}

/** A length within what can be set, to the whole mm. */
export function soundLength(mm: number): number {
  return Math.min(longestFringeMm, Math.max(0, Math.round(mm)));
}
