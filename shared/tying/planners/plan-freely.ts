/** One plan as it is asked for, whatever the design says of how many strands shall hang at once. */
import type { Chart } from '../../chart/chart.ts';
import { chartHash, chartJson } from '../../chart/chart-json.ts';
import type { Design } from '../../design/design.ts';
import { good, type Result } from '../../result.ts';
import type { Plan } from '../plan.ts';
import type { PlanWishes } from '../plan-wishes.ts';
import { wishedQuestion } from '../question/wished-question.ts';
import { assemblePlan, publishedPlan } from './assemble-plan.ts';
import { planFully } from './plan-fully.ts';
import { planQuickly } from './plan-quickly.ts';

/** Gives the share that is done, at each step. A wish for few live strands makes it a full plan that keeps to it. */
export function* planFreely(
  design: Design,
  chart: Chart,
  { effort = 'full', ...wishes }: PlanWishes,
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
