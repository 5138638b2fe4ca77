/**
 * For a maker who wishes that no more than so many strands hang at once: the full plan as it is best, and where that
 * one has more, another that keeps the wish, with what it takes. Which of the two is used is the maker's to choose.
 */
import type { Chart } from '../chart/chart.ts';
import type { Design } from '../design/design.ts';
import { good, type Result } from '../result.ts';
import { liveWarning } from './live-warning.ts';
import type { Plan } from './plan.ts';
import { planSteps } from './plan-steps.ts';
import type { PlanWishes } from './plan-wishes.ts';

export interface PlansToWish {
  /** The full plan, made without the wish. */
  readonly plan: Plan;
  /** The one that keeps the wish; null where `plan` does, and where nothing is wished. */
  readonly held: Plan | null;
  /** What the wish takes, as a sentence or two for the maker; null where nothing is to be told. */
  readonly warning: string | null;
}

/**
 * Gives the share that is done, at each step, like `planSteps`. `chart` is the design's own.
 * Problems: those of `planStrands`, `cancelled` excepted.
 */
export function* plansToWish(
  design: Design,
  chart: Chart,
  { liveWish, ...wishes }: Omit<PlanWishes, 'effort'>,
): Generator<number, Result<PlansToWish>> {
  const plan = yield* halved(planSteps(design, chart, wishes), 0);
  if (!plan.ok) return plan;
  if (liveWish === undefined || plan.value.totals.liveMax <= liveWish)
    return good({ plan: plan.value, held: null, warning: null });
  const held = yield* halved(planSteps(design, chart, { ...wishes, liveWish }), 0.5);
  if (!held.ok) return held;
  return good({
    plan: plan.value,
    held: held.value,
    warning: liveWarning(plan.value, held.value, liveWish),
  });
}

/** The same steps as half of something, from the share `begun` on. */
function* halved<T>(steps: Generator<number, T>, begun: number): Generator<number, T> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield begun + step.value / 2;
  }
}
