/** Tells a maker who wishes that few strands hang at once what the wish takes, or why it can't be kept. */

import { counted } from '../units/counted.ts';
import type { Units } from '../units/units.ts';
import { yarnLengthDifference } from '../units/yarn-length.ts';
import type { PlanTotals } from './plan.ts';

/** What two plans of one chart are compared by, as `planToWish` gives them. */
export interface WishedTotals {
  readonly wish: number;
  /** Of the plan in use. */
  readonly plan: Totals;
  /** Of the best plan without the wish; null where that is the one in use. */
  readonly free: Totals | null;
}

type Totals = Pick<PlanTotals, 'liveMax' | 'pieces' | 'cutMm'>;

/** A sentence or two; null where the wish takes nothing. */
export function liveWarning({ wish, plan, free }: WishedTotals, units: Units): string | null {
  if (!free) return null;
  if (plan.liveMax > wish)
    return `You wish for at most ${wish} hanging at once, but the rows that are tied already leave ${plan.liveMax}.`;
  const kept = `At most ${hang(plan.liveMax)} at once, as you wish; else ${free.liveMax} would.`;
  const more = plan.pieces - free.pieces;
  if (more <= 0) return `${kept} It takes no more pieces.`;
  const pieces = counted(more, 'more piece');
  const yarn = yarnLengthDifference(free.cutMm, plan.cutMm, units, { enough: true });
  const takes = [pieces, `so ${counted(2 * more, 'more loose end')}`];
  // Where hundreds of metres are cut, a piece more may not be seen in them.
  if (!yarn.startsWith('+')) return `${kept} It takes ${takes.join(', ')}.`;
  return `${kept} It takes ${takes.join(', ')} and ${yarn.replaceAll('+', '')} more yarn.`;
}

function hang(count: number): string {
  return counted(count, 'strand hangs', 'strands hang');
}
