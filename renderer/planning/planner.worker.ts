/** Plans in a worker, with the same code as everywhere, so that drawing is never held up. */
import type { Chart } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { good, type Result } from '../../shared/result.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';

/** The design comes without its layers: the chart says all that a plan needs. */
export interface PlanQuestion {
  readonly design: Design;
  readonly chart: Chart;
}

export type PlanAnswer = Result<Materials>;

self.addEventListener('message', ({ data }: MessageEvent<PlanQuestion>) => {
  const { design, chart } = data;
  const plan = planStrands(design, chart);
  const materials: PlanAnswer = plan.ok ? good(materialsOf(design, chart, plan.value)) : plan;
  self.postMessage(materials);
});
