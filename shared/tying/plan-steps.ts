/**
 * Planning in steps, for whoever has other things to see to meanwhile: between two steps a worker may listen for a
 * newer question and drop this one.
 */
import type { Chart } from '../chart/chart.ts';
import { chartHash, chartJson } from '../chart/chart-json.ts';
import type { Design } from '../design/design.ts';
import type { Gauge } from '../gauge/gauge.ts';
import { good, type Result } from '../result.ts';
import { assemblePlan } from './assemble-plan.ts';
import type { Plan } from './plan.ts';
import { planFully } from './plan-fully.ts';
import { planQuestion } from './plan-question.ts';
import { planQuickly } from './plan-quickly.ts';
import { type TiedBy, tiedRows } from './tied-rows.ts';

export interface PlanWishes {
  /** The gauge to plan with, where it is not the design's own. */
  readonly gauge?: Gauge;
  /** A quick plan takes milliseconds, and a few per cent more pieces than a full one, which may take seconds. */
  readonly effort?: 'quick' | 'full';
  /** At most so many strands shall hang at once between two rows; the plan is then a full one. */
  readonly liveWish?: number;
  /** Rows that are tied already, and the plan they were tied by: they stay, and strands go on from where they hang. */
  readonly tied?: TiedBy;
}

/** Gives the share that is done, at each step; its last answer is that of `planStrands`. */
export function* planSteps(
  design: Design,
  chart: Chart,
  { gauge, effort = 'full', liveWish, tied }: PlanWishes = {},
): Generator<number, Result<Plan>> {
  const asked = planQuestion(design, chart, gauge);
  if (!asked.ok) return asked;
  let question = asked.value;
  if (tied && tied.rows > 0) {
    const read = tiedRows(tied, question);
    if (!read.ok) return read;
    question = { ...question, tied: read.value };
  }
  const choice =
    effort === 'quick' && liveWish === undefined
      ? planQuickly(question)
      : yield* planFully(question, liveWish);
  return good(assemblePlan(question, choice, chartHash(chartJson(design, chart))));
}
