import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import { good, type Result } from '../../result.ts';
import type { PlainPlan } from '../plan.ts';
import { assemblePlan } from '../planners/assemble-plan.ts';
import { wishedQuestion } from '../question/wished-question.ts';
import { KeptStrands } from './kept-strands.ts';

/**
 * Quick plans for live figures, one after another: each is repaired from the one before where the chart and the pins
 * have changed a little, and is the very plan that `planStrands` gives with the effort 'quick', without its hash.
 */
export class LivePlans {
  readonly #kept = new KeptStrands();

  /** `chart` is the design's own. Problem: `piece-too-short`. */
  plan(design: Design, chart: Chart): Result<PlainPlan> {
    const asked = wishedQuestion(design, chart, {}, this.#kept.runsOf(chart));
    if (!asked.ok) return asked;
    const { question } = asked.value;
    return good(assemblePlan(question, this.#kept.choose(question)));
  }
}
