/** The full plan, made with pauses, so that the host sees to other things meanwhile, and to a click on Cancel. */
import { setImmediate } from 'node:timers/promises';
import type { CancelSignal } from '../../../shared/bridge.ts';
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Result } from '../../../shared/result.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import { planSteps } from '../../../shared/tying/plan-steps.ts';

/** Null where it was cancelled. `onShare` hears how much of it is done, from 0 to 1. */
export async function planWithPauses(
  design: Design,
  chart: Chart,
  signal: CancelSignal | undefined,
  onShare?: (share: number) => void,
): Promise<Result<Plan> | null> {
  const steps = planSteps(design, chart);
  for (let step = steps.next(); ; step = steps.next()) {
    if (signal?.aborted) return null;
    if (step.done) return step.value;
    onShare?.(step.value);
    await setImmediate();
  }
}
