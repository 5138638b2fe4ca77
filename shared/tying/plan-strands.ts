/** The plan of strands that everything is made from: screens, pages, materials and the command line. */
import type { CallOptions } from '../bridge.ts';
import type { Chart } from '../chart/chart.ts';
import type { Design } from '../design/design.ts';
import { problem, type Result } from '../result.ts';
import type { Plan } from './plan.ts';
import { planSteps } from './plan-steps.ts';
import type { PlanWishes } from './plan-wishes.ts';

/**
 * `chart` is the design's own, as `flatten` makes it. The plan is full and keeps to the design's wish for few live
 * strands (`plan-to-wish.ts`), unless a quick one is asked for, which leaves that wish aside. The signal is looked at
 * between steps.
 * Problems: `piece-too-short` where the working length can't hold one knot and two tails; `tied-otherwise` and
 * `tied-rows-changed`, see `tied-rows.ts`; `cancelled`.
 */
export function planStrands(
  design: Design,
  chart: Chart,
  { signal, onProgress, ...wishes }: PlanWishes & CallOptions = {},
): Result<Plan> {
  const steps = planSteps(design, chart, wishes);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    if (signal?.aborted) return problem('cancelled', 'The plan was not made, because it was cancelled.');
    onProgress?.({ done: step.value, what: 'Planning the strands' });
  }
}
