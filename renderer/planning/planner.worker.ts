/**
 * Plans in a worker, with the same code as everywhere, so that drawing is never held up. Each question gets a quick
 * answer at once and a full one when that is done, unless a newer question has come meanwhile.
 */
import type { Chart } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { good, type Result } from '../../shared/result.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planSteps } from '../../shared/tying/plan-steps.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';

/** The design comes without its layers: the chart says all that a plan needs. */
export interface PlanQuestion {
  readonly number: number;
  readonly design: Design;
  readonly chart: Chart;
}

export interface PlanAnswer {
  /** The question's. */
  readonly number: number;
  /** Else a better answer follows. */
  readonly full: boolean;
  readonly materials: Result<Materials>;
}

let newest = 0;

self.addEventListener('message', async ({ data }: MessageEvent<PlanQuestion>) => {
  newest = data.number;
  const { design, chart } = data;
  const quick = planStrands(design, chart, { effort: 'quick' });
  answer(data, quick, !quick.ok);
  if (!quick.ok) return;
  const steps = planSteps(design, chart);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return answer(data, step.value, true);
    await newsArrives();
    if (newest !== data.number) return;
  }
});

function answer({ number, design, chart }: PlanQuestion, plan: Result<Plan>, full: boolean): void {
  const materials = plan.ok ? good(materialsOf(design, chart, plan.value)) : plan;
  self.postMessage({ number, full, materials } satisfies PlanAnswer);
}

/** Lets a question in that waits. */
function newsArrives(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
