/** The plan of strands that everything is made from: screens, pages, materials and the command line. */
import type { Chart } from '../chart/chart.ts';
import type { Design } from '../design/design.ts';
import type { Gauge } from '../gauge/gauge.ts';
import type { Result } from '../result.ts';
import type { Plan } from './plan.ts';
import { planBy } from './plan-by.ts';
import { planQuickly } from './plan-quickly.ts';

export interface PlanOptions {
  /** The gauge to plan with, where it is not the design's own. */
  readonly gauge?: Gauge;
}

/**
 * `chart` is the design's own, as `flatten` makes it.
 * Problem: `piece-too-short` where the working length can't hold one knot and two tails.
 */
export function planStrands(design: Design, chart: Chart, { gauge }: PlanOptions = {}): Result<Plan> {
  return planBy(planQuickly, design, chart, gauge);
}
