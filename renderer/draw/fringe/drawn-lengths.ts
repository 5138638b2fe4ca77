import { soundLength } from './fringe-ends.ts';

/** Where a hand is over the cord ends: over which cord (from 0), and how long the fringe is there. */
export interface HandPlace {
  readonly cord: number;
  readonly mm: number;
}

/**
 * The lengths after a hand went straight from one place to another: every cord that it passed is as long as the hand
 * was low there, so that a fast hand leaves no cord out. Places may lie beside the cords.
 */
export function drawnLengths(lengthsMm: readonly number[], from: HandPlace, to: HandPlace): number[] {
  const next = [...lengthsMm];
  const first = Math.max(0, Math.min(from.cord, to.cord));
  const last = Math.min(next.length - 1, Math.max(from.cord, to.cord));
  for (let cord = first; cord <= last; cord++) {
    const share = to.cord === from.cord ? 1 : (cord - from.cord) / (to.cord - from.cord);
    next[cord] = soundLength(from.mm + (to.mm - from.mm) * share);
  }
  return next;
}
