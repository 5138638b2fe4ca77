/** From a design to its plan, by any planner that answers at once. */
import type { Chart } from '../../chart/chart.ts';
import { chartHash, chartJson } from '../../chart/chart-json.ts';
import type { Design } from '../../design/design.ts';
import type { Gauge } from '../../gauge/gauge.ts';
import { good, type Result } from '../../result.ts';
import type { Plan } from '../plan.ts';
import { planQuestion } from '../question/plan-question.ts';
import type { Planner } from '../question/strand-choice.ts';
import { assemblePlan, publishedPlan } from './assemble-plan.ts';

/** `chart` is the design's own, as `flatten` makes it. Problem: `piece-too-short`, see `check-tying.ts`. */
export function planBy(planner: Planner, design: Design, chart: Chart, gauge?: Gauge): Result<Plan> {
  const question = planQuestion(design, chart, gauge);
  if (!question.ok) return question;
  const plain = assemblePlan(question.value, planner(question.value));
  return good(publishedPlan(plain, chartHash(chartJson(design, chart))));
}
