/** From a design to the bytes of its bundles' labels: the one way for the command line and both hosts. */
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { SettledPlan } from '../../../shared/design/schema.ts';
import { bundlesOf } from '../../../shared/materials/bundles/bundles.ts';
import { planAsCut } from '../../../shared/materials/bundles/plan-as-cut.ts';
import { layOutLabels } from '../../../shared/pattern/lay-out-labels.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { settlePlan } from '../../../shared/tying/kept/settled-plan.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { writePatternPdf } from './draw-pdf.ts';
import type { MadePattern, MakePatternOptions } from './make-pattern.ts';
import { planWithPauses } from './plan-with-pauses.ts';
import { plannedThenDrawn } from './planned-then-drawn.ts';

export interface MakeLabelsOptions extends MakePatternOptions {
  /** Each piece cut as long as it is used, by `usualFitting`, not at the working length. */
  readonly fitted: boolean;
}

export interface MadeLabels extends MadePattern {
  /** The plan that the labels are of, to be kept with the design. */
  readonly plan: SettledPlan | null;
}

/** Problems: those of the plan; `nothing-to-cut` where no knot is tied; `cancelled`. */
export async function makeLabels(design: Design, options: MakeLabelsOptions): Promise<Result<MadeLabels>> {
  const { paper, units, fitted, signal, onProgress } = options;
  const { onPlanned, onDrawn } = plannedThenDrawn(onProgress);
  onPlanned(0);
  const chart = flatten(design);
  const plan = await planWithPauses(design, chart, signal, onPlanned);
  if (!plan) return cancelled();
  if (!plan.ok) return plan;
  const cut = planAsCut({ bundles: { fitted } }, plan.value);
  const document = layOutLabels({ design, bundles: bundlesOf(tyingOrder(chart, cut)), paper, units });
  if (document.pages.length === 0) {
    return problem(
      'nothing-to-cut',
      'The chart is all bare, so there is nothing to cut and no label to print.',
    );
  }
  const bytes = await writePatternPdf(document, { ...options, onProgress: onDrawn });
  if (!bytes) return cancelled();
  const settled = settlePlan(design, chart, plan.value);
  return good({ bytes, pages: document.pages.length, notices: document.notices, plan: settled });
}

function cancelled(): ReturnType<typeof problem> {
  return problem('cancelled', 'No labels were made, because it was cancelled. Nothing was written.');
}
