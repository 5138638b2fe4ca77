/**
 * Looks at the picture and plans it in a worker, with the same code as everywhere, so that drawing is never held up. Each
 * question gets three answers: what the picture shows by itself and a quick plan at once, and the full plan when that is
 * done, unless a newer question has come meanwhile. The full plan waits until the hand rests, so that a question which
 * follows soon is not held up by it.
 */
import type { Chart } from '../../shared/chart/chart.ts';
import { loneKnots } from '../../shared/chart/cost/lone-knots.ts';
import { looseEndCells } from '../../shared/chart/cost/loose-end-cells.ts';
import { type CostMarks, type PictureCost, pictureCost } from '../../shared/chart/cost/picture-cost.ts';
import { shortRuns } from '../../shared/chart/cost/short-runs.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { good, type Result } from '../../shared/result.ts';
import type { PlainPlan } from '../../shared/tying/plan.ts';
import { planSteps } from '../../shared/tying/plan-steps.ts';
import { LivePlans } from '../../shared/tying/repair/live-plans.ts';
import { type AlikePair, alikePairs } from '../../shared/yarn/alike-pairs.ts';

/** The design comes without its layers: the chart says all that a plan needs. */
export interface PlanQuestion {
  readonly number: number;
  readonly design: Design;
  readonly chart: Chart;
}

export interface PictureAnswer extends CostMarks {
  readonly kind: 'picture';
  /** The chart's size: by now it may have another. */
  readonly columns: number;
  readonly rows: number;
  readonly pairs: readonly AlikePair[];
}

export interface PlanAnswer {
  readonly kind: 'plan';
  /** The question's. */
  readonly number: number;
  /** Else a better answer follows. */
  readonly full: boolean;
  readonly materials: Result<Materials>;
  /** Null where there is no plan. */
  readonly cost: PictureCost | null;
  /** A byte a cell, 1 where any end is loose; null where there is no plan. */
  readonly looseEnds: Uint8Array | null;
}

/** The hand rests where no question has come for so long. */
const restMs = 200;
/** How long it plans between two looks at what has come in. */
const lookMs = 15;

let newest = 0;
/** Remembers the chart before, from which the next one mostly differs little. */
const live = new LivePlans();

self.addEventListener('message', async ({ data }: MessageEvent<PlanQuestion>) => {
  newest = data.number;
  const { design, chart } = data;
  const picture = pictureAnswer(data);
  self.postMessage(picture);
  const quick = live.plan(design, chart);
  self.postMessage(planAnswer(data, picture, quick, !quick.ok));
  if (!quick.ok) return;
  await newsArrives(restMs);
  const steps = planSteps(design, chart);
  let looked = performance.now();
  while (newest === data.number) {
    const step = steps.next();
    if (step.done) return self.postMessage(planAnswer(data, picture, step.value, true));
    if (performance.now() - looked < lookMs) continue;
    await newsArrives();
    looked = performance.now();
  }
});

function pictureAnswer({ design, chart }: PlanQuestion): PictureAnswer {
  return {
    kind: 'picture',
    columns: chart.columns,
    rows: chart.rows,
    loneKnots: loneKnots(chart),
    shortRuns: shortRuns(chart),
    pairs: alikePairs(chart, design.yarns),
  };
}

function planAnswer(
  { number, design, chart }: PlanQuestion,
  marks: CostMarks,
  plan: Result<PlainPlan>,
  full: boolean,
): PlanAnswer {
  if (!plan.ok) return { kind: 'plan', number, full, materials: plan, cost: null, looseEnds: null };
  const materials = materialsOf(design, chart, plan.value);
  return {
    kind: 'plan',
    number,
    full,
    materials: good(materials),
    cost: pictureCost(marks, materials),
    looseEnds: looseEndCells(plan.value).map((ends) => (ends > 0 ? 1 : 0)),
  };
}

/** Lets in a question that waits, or that comes within so many ms. */
function newsArrives(withinMs = 0): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, withinMs));
}
