/**
 * Planning in steps, for whoever has other things to see to meanwhile: between two steps a worker may listen for a
 * newer question and drop this one.
 */
import type { Chart } from '../chart/chart.ts';
import type { Design } from '../design/design.ts';
import { good, type Result } from '../result.ts';
import type { Plan } from './plan.ts';
import type { PlanWishes } from './plan-wishes.ts';
import { planFreely } from './planners/plan-freely.ts';
import { planToWish } from './planners/plan-to-wish.ts';

/**
 * Gives the share that is done, at each step; its last answer is that of `planStrands`. A quick plan leaves the
 * design's wish for few live strands aside.
 */
export function* planSteps(
  design: Design,
  chart: Chart,
  { effort = 'full', ...wishes }: PlanWishes = {},
): Generator<number, Result<Plan>> {
  if (effort === 'quick' && wishes.liveWish === undefined)
    return yield* planFreely(design, chart, { ...wishes, effort });
  const made = yield* planToWish(design, chart, wishes);
  return made.ok ? good(made.value.plan) : made;
}
