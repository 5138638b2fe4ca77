/**
 * Plans the open design for the Plan screen: a quick plan at once, what a careful person would need, then the full plan
 * with its progress. A newer question, or the word to stop, is listened for between two steps.
 */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { type Bundles, bundlesOf } from '../../../shared/materials/bundles/bundles.ts';
import { planAsCut } from '../../../shared/materials/bundles/plan-as-cut.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { good, type Result } from '../../../shared/result.ts';
import { planCarefully } from '../../../shared/tying/careful-person/plan-carefully.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type PlanToWish, planToWish } from '../../../shared/tying/planners/plan-to-wish.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import { stepsOfRow } from '../../../shared/tying/steps/steps-of-row.ts';
import { type TyingOrder, tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { type Figures, figuresOf } from './figures.ts';
import { listedCounts, listedSteps, type OrderWish } from './listed-steps.ts';
import { nextSteps } from './next-steps.ts';
import { buffersOf } from './plan-tables.ts';
import { type Planned, planned } from './planned.ts';
import { type PlanSource, plannedAlike } from './planned-alike.ts';

export type Effort = 'quick' | 'full';

export type PlansQuestion =
  /** The design comes without its layers: the chart says all that a plan needs. */
  | { readonly kind: 'plan'; readonly number: number; readonly design: Design; readonly chart: Chart }
  | { readonly kind: 'stop' }
  /** What is done next, by the last plan that was answered. */
  | { readonly kind: 'steps'; readonly knots: number }
  /** All steps of a row, from 1. */
  | { readonly kind: 'row-steps'; readonly row: number }
  /** How many steps of the whole order are listed of each row. */
  | { readonly kind: 'order'; readonly wish: OrderWish }
  /** The listed steps of some rows, from 1. */
  | { readonly kind: 'order-rows'; readonly wish: OrderWish; readonly rows: readonly number[] }
  | { readonly kind: 'bundles' };

export type PlansAnswer =
  | { readonly kind: 'planned'; readonly number: number; readonly effort: Effort; readonly planned: Planned }
  | { readonly kind: 'careful'; readonly number: number; readonly figures: Figures }
  /** Share of the full plan that is done. */
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'problem'; readonly number: number; readonly sentence: string }
  | { readonly kind: 'steps'; readonly knots: number; readonly steps: readonly Step[] }
  | { readonly kind: 'row-steps'; readonly row: number; readonly steps: readonly Step[] }
  | { readonly kind: 'order'; readonly wish: OrderWish; readonly counts: Int32Array }
  | {
      readonly kind: 'order-rows';
      readonly wish: OrderWish;
      readonly rows: readonly { readonly row: number; readonly steps: readonly Step[] }[];
    }
  | {
      readonly kind: 'bundles';
      /** Of the plan that they are of. */
      readonly effort: Effort;
      readonly whole: Bundles;
      readonly fitted: Bundles;
    };

/**
 * What was planned last, of the design without how its pieces are cut: where only that changes, the plan stays, and
 * what is cut of it is counted anew.
 */
interface Kept extends PlanSource {
  readonly quick: Plan;
  careful: Result<Plan> | null;
  full: PlanToWish | null;
}

/** How long it plans between two looks at what has come in, and between two words of its progress. */
const lookMs = 30;
const tellMs = 120;

/** The newest question; -1 where planning was stopped. */
let newest = -1;
let kept: Kept | null = null;
/** What was answered last: the plan as it was made, and its order with the pieces as they are cut. */
let told: {
  readonly effort: Effort;
  readonly chart: Chart;
  readonly plan: Plan;
  readonly order: TyingOrder;
} | null = null;

self.addEventListener('message', ({ data }: MessageEvent<PlansQuestion>) => {
  switch (data.kind) {
    case 'plan':
      newest = data.number;
      plan(data.number, data.design, data.chart);
      break;
    case 'stop':
      newest = -1;
      break;
    case 'steps':
      answer({ kind: 'steps', knots: data.knots, steps: told ? nextSteps(told.order, data.knots) : [] });
      break;
    case 'row-steps':
      if (told && data.row <= told.order.rows.length)
        answer({ kind: 'row-steps', row: data.row, steps: stepsOfRow(told.order, data.row) });
      break;
    case 'order':
      if (told) answer({ kind: 'order', wish: data.wish, counts: listedCounts(told.order, data.wish) });
      break;
    case 'order-rows':
      if (told) answer({ kind: 'order-rows', wish: data.wish, rows: orderRows(told.order, data) });
      break;
    case 'bundles':
      if (told) answer({ kind: 'bundles', effort: told.effort, ...bothBundles(told.chart, told.plan) });
      break;
  }
});

async function plan(number: number, design: Design, chart: Chart): Promise<void> {
  const { bundles: _, ...uncut } = design;
  const before: Kept | null = kept && plannedAlike(kept, { design: uncut, chart }) ? kept : null;
  const quick = before ? good(before.quick) : planStrands(design, chart, { effort: 'quick' });
  if (!quick.ok) return answer({ kind: 'problem', number, sentence: quick.problem.sentence });
  const own: Kept = before ?? { design: uncut, chart, quick: quick.value, careful: null, full: null };
  kept = own;
  tell(number, 'quick', design, chart, { plan: quick.value });
  await newsArrives();
  if (newest !== number) return;
  own.careful ??= planCarefully(design, chart);
  if (own.careful.ok) {
    const figures = figuresOf(materialsOf(design, chart, own.careful.value), own.careful.value);
    answer({ kind: 'careful', number, figures });
  }
  if (own.full) tell(number, 'full', design, chart, own.full);
  else await planFully(number, design, chart, own);
}

async function planFully(number: number, design: Design, chart: Chart, into: Kept): Promise<void> {
  const steps = planToWish(design, chart);
  let looked = performance.now();
  let toldAt = looked;
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) {
      if (!step.value.ok) return;
      into.full = step.value.value;
      tell(number, 'full', design, chart, into.full);
      return;
    }
    if (performance.now() - looked < lookMs) continue;
    if (performance.now() - toldAt >= tellMs) {
      answer({ kind: 'progress', number, done: step.value });
      toldAt = performance.now();
    }
    await newsArrives();
    if (newest !== number) return;
    looked = performance.now();
  }
}

type Made = Parameters<typeof planned>[2];

function tell(number: number, effort: Effort, design: Design, chart: Chart, made: Made): void {
  const all = planned(design, chart, made);
  told = { effort, chart, plan: made.plan, order: all.order };
  answer({ kind: 'planned', number, effort, planned: all.planned }, buffersOf(all.planned.tables));
}

/** Rows that the chart has no more are left out. */
function orderRows(
  order: TyingOrder,
  { wish, rows }: Extract<PlansQuestion, { readonly kind: 'order-rows' }>,
): { row: number; steps: readonly Step[] }[] {
  const within = rows.filter((row) => row <= order.rows.length);
  return within.map((row) => ({ row, steps: listedSteps(order, row, wish) }));
}

/** With pieces of the working length, and with pieces cut to measure. */
function bothBundles(chart: Chart, plan: Plan): { whole: Bundles; fitted: Bundles } {
  const bundles = (fitted: boolean) => bundlesOf(tyingOrder(chart, planAsCut({ bundles: { fitted } }, plan)));
  return { whole: bundles(false), fitted: bundles(true) };
}

function answer(words: PlansAnswer, buffers: ArrayBuffer[] = []): void {
  self.postMessage(words, { transfer: buffers });
}

/** Lets in what waits. */
function newsArrives(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
