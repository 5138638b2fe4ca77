/** Tells a maker that more strands will hang at once than they wished for, and what it takes to stay with the wish. */
import type { Plan } from './plan.ts';

/**
 * A sentence or two, or null where no more than `wish` hang. `plan` is the one in use, `held` the one that was made
 * with the wish; they are of one chart.
 */
export function liveWarning({ totals }: Plan, held: Plan, wish: number): string | null {
  if (totals.liveMax <= wish) return null;
  const needs = `As planned, ${strands(totals.liveMax)} at once; you wished for at most ${wish}.`;
  if (held.totals.liveMax > wish) {
    return `${needs} The rows that are tied already leave ${held.totals.liveMax} hanging.`;
  }
  const more = held.totals.pieces - totals.pieces;
  if (more <= 0) return `${needs} With other carries, ${wish} are enough, for no more pieces.`;
  const pieces = more === 1 ? '1 more piece' : `${more} more pieces`;
  return `${needs} To stay with ${wish} takes ${pieces}, so ${2 * more} more loose ends.`;
}

function strands(count: number): string {
  return count === 1 ? '1 strand hangs' : `${count} strands hang`;
}
