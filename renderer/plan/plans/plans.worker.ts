/**
 * Plans the open design for the Plan screen: a quick plan at once, what a careful person would need, then the full plan
 * with its progress. A newer question, or the word to stop, is listened for between two steps.
 */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { type Bundles, bundlesOf } from '../../../shared/materials/bundles/bundles.ts';
import { fittedPlan, usualFitting } from '../../../shared/materials/bundles/fitted-plan.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { planCarefully } from '../../../shared/tying/plan-carefully.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { planToWish } from '../../../shared/tying/plan-to-wish.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import { stepsOfRow } from '../../../shared/tying/steps/steps-of-row.ts';
import { type TyingOrder, tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { type Figures, figuresOf } from './figures.ts';
import { nextSteps } from './next-steps.ts';
import { buffersOf } from './plan-tables.ts';
import { type Planned, planned } from './planned.ts';

export type Effort = 'quick' | 'full';

export type PlansQuestion =
  /** The design comes without its layers: the chart says all that a plan needs. */
  | { readonly kind: 'plan'; readonly number: number; readonly design: Design; readonly chart: Chart }
  | { readonly kind: 'stop' }
  /** What is done next, by the last plan that was answered. */
  | { readonly kind: 'steps'; readonly knots: number }
  /** All steps of a row, from 1. */
  | { readonly kind: 'row-steps'; readonly row: number }
  | { readonly kind: 'bundles' };

export type PlansAnswer =
  | { readonly kind: 'planned'; readonly number: number; readonly effort: Effort; readonly planned: Planned }
  | { readonly kind: 'careful'; readonly number: number; readonly figures: Figures }
  /** Share of the full plan that is done. */
  | { readonly kind: 'progress'; readonly number: number; readonly done: number }
  | { readonly kind: 'problem'; readonly number: number; readonly sentence: string }
  | { readonly kind: 'steps'; readonly knots: number; readonly steps: readonly Step[] }
  | { readonly kind: 'row-steps'; readonly row: number; readonly steps: readonly Step[] }
  | {
      readonly kind: 'bundles';
      /** Of the plan that they are of. */
      readonly effort: Effort;
      readonly whole: Bundles;
      readonly fitted: Bundles;
    };

/** How long it plans between two looks at what has come in, and between two words of its progress. */
const lookMs = 30;
const tellMs = 120;

/** The newest question; -1 where planning was stopped. */
let newest = -1;
let order: TyingOrder | null = null;
/** Of the plan whose order it is. */
let effortOfOrder: Effort = 'quick';

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
      answer({ kind: 'steps', knots: data.knots, steps: order ? nextSteps(order, data.knots) : [] });
      break;
    case 'row-steps':
      if (order && data.row <= order.rows.length)
        answer({ kind: 'row-steps', row: data.row, steps: stepsOfRow(order, data.row) });
      break;
    case 'bundles':
      if (order) answer({ kind: 'bundles', effort: effortOfOrder, ...bothBundles(order) });
      break;
  }
});

async function plan(number: number, design: Design, chart: Chart): Promise<void> {
  const quick = planStrands(design, chart, { effort: 'quick' });
  if (!quick.ok) return answer({ kind: 'problem', number, sentence: quick.problem.sentence });
  tell(number, 'quick', design, chart, { plan: quick.value });
  await newsArrives();
  if (newest !== number) return;
  const careful = planCarefully(design, chart);
  if (careful.ok) {
    const figures = figuresOf(materialsOf(design, chart, careful.value), careful.value);
    answer({ kind: 'careful', number, figures });
  }
  await planFully(number, design, chart);
}

async function planFully(number: number, design: Design, chart: Chart): Promise<void> {
  const steps = planToWish(design, chart);
  let looked = performance.now();
  let told = looked;
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) {
      if (step.value.ok) tell(number, 'full', design, chart, step.value.value);
      return;
    }
    if (performance.now() - looked < lookMs) continue;
    if (performance.now() - told >= tellMs) {
      answer({ kind: 'progress', number, done: step.value });
      told = performance.now();
    }
    await newsArrives();
    if (newest !== number) return;
    looked = performance.now();
  }
}

type Made = Parameters<typeof planned>[2];

function tell(number: number, effort: Effort, design: Design, chart: Chart, made: Made): void {
  const all = planned(design, chart, made);
  order = all.order;
  effortOfOrder = effort;
  answer({ kind: 'planned', number, effort, planned: all.planned }, buffersOf(all.planned.tables));
}

/** With pieces of the working length, and with pieces cut to measure. */
function bothBundles(whole: TyingOrder): { whole: Bundles; fitted: Bundles } {
  const { chart, plan } = whole;
  const fitted = tyingOrder(chart, fittedPlan(plan, usualFitting));
  return { whole: bundlesOf(whole), fitted: bundlesOf(fitted) };
}

function answer(words: PlansAnswer, buffers: ArrayBuffer[] = []): void {
  self.postMessage(words, { transfer: buffers });
}

/** Lets in what waits. */
function newsArrives(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
