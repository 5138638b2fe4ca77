/**
 * The full plan of a maker who may wish that no more than so many strands hang at once. It is the best one where that
 * keeps the wish; else another one that does, with the best one beside it, so that the maker sees what the wish takes.
 */
import type { Chart } from '../../chart/chart.ts';
import type { Design } from '../../design/design.ts';
import { good, type Result } from '../../result.ts';
import { settledPlan } from '../kept/settled-plan.ts';
import type { Plan } from '../plan.ts';
import type { PlanWishes } from '../plan-wishes.ts';
import { planFreely } from './plan-freely.ts';

export interface PlanToWish {
  /** The plan that is tied by. */
  readonly plan: Plan;
  /** The best one without the wish; null where it is the same, where nothing is wished, and where the plan is settled. */
  readonly free: Plan | null;
}

/**
 * The wish is the design's own, `tying.liveWish`, unless another is given. Gives the share that is done, at each step.
 * `chart` is the design's own. Problems: those of `planStrands`, `cancelled` excepted.
 */
export function* planToWish(
  design: Design,
  chart: Chart,
  { liveWish = design.tying.liveWish, ...wishes }: Omit<PlanWishes, 'effort'> = {},
): Generator<number, Result<PlanToWish>> {
  const settled = isAsTold(design, liveWish, wishes) ? settledPlan(design, chart) : null;
  if (settled) return good({ plan: settled, free: null });
  const isWished = liveWish !== undefined;
  const best = yield* within(planFreely(design, chart, wishes), 0, isWished ? 0.5 : 1);
  if (!best.ok) return best;
  if (!isWished) return good({ plan: best.value, free: null });
  if (best.value.totals.liveMax <= liveWish) return good({ plan: toWish(best.value, liveWish), free: null });
  const held = yield* within(planFreely(design, chart, { ...wishes, liveWish }), 0.5, 1);
  if (!held.ok) return held;
  return good({ plan: toWish(held.value, liveWish), free: best.value });
}

/** Nothing is asked for but what the design itself tells. */
function isAsTold({ tying }: Design, liveWish: number | undefined, { gauge, tied }: PlanWishes): boolean {
  return liveWish === tying.liveWish && gauge === undefined && tied === undefined;
}

/** The plan tells the wish that it was made for; the one without it is as if nothing were wished. */
function toWish(plan: Plan, liveWish: number): Plan {
  return { ...plan, settings: { ...plan.settings, liveWish } };
}

/** The same steps as a part of something: from one share of it to another. */
function* within<T>(steps: Generator<number, T>, from: number, to: number): Generator<number, T> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield from + step.value * (to - from);
  }
}
