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

export interface PlanWishes {
  /** The gauge to plan with, where it is not the design's own. */
  readonly gauge?: Gauge;
  /** A quick plan takes milliseconds, and a few per cent more pieces than a full one, which may take seconds. */
  readonly effort?: 'quick' | 'full';
}

/** Gives the share that is done, at each step; its last answer is that of `planStrands`. */
export function* planSteps(
  design: Design,
  chart: Chart,
  { gauge, effort = 'full' }: PlanWishes = {},
): Generator<number, Result<Plan>> {
  const asked = planQuestion(design, chart, gauge);
  if (!asked.ok) return asked;
  const question = asked.value;
  const choice = effort === 'quick' ? planQuickly(question) : yield* planFully(question);
  return good(assemblePlan(question, choice, chartHash(chartJson(design, chart))));
}
