/**
 * Planning in steps, for whoever has other things to see to meanwhile: between two steps a worker may listen for a
 * newer question and drop this one.
 */
import type { Chart } from '../chart/chart.ts';
import { chartHash, chartJson } from '../chart/chart-json.ts';
import type { Design } from '../design/design.ts';
import { good, type Result } from '../result.ts';
import { assemblePlan, publishedPlan } from './assemble-plan.ts';
import type { Plan } from './plan.ts';
import { planFully } from './plan-fully.ts';
import { planQuickly } from './plan-quickly.ts';
import type { PlanWishes } from './plan-wishes.ts';
import { wishedQuestion } from './wished-question.ts';

/** Gives the share that is done, at each step; its last answer is that of `planStrands`. */
export function* planSteps(
  design: Design,
  chart: Chart,
  { effort = 'full', ...wishes }: PlanWishes = {},
): Generator<number, Result<Plan>> {
  const asked = wishedQuestion(design, chart, wishes);
  if (!asked.ok) return asked;
  const { question } = asked.value;
  const { liveWish } = wishes;
  const choice =
    effort === 'quick' && liveWish === undefined
      ? planQuickly(question)
      : yield* planFully(question, liveWish);
  return good(publishedPlan(assemblePlan(question, choice), chartHash(chartJson(design, chart))));
}
