/**
 * What the Plan screen knows of the open design's plan, as far as it was answered, and what the person looks at. It
 * belongs to one open design and is forgotten when the screen is left.
 */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Pin } from '../../../shared/design/schema.ts';
import type { Bundles } from '../../../shared/materials/bundles/bundles.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import type { Figures } from './figures.ts';
import type { OrderWish } from './listed-steps.ts';
import type { Planned } from './planned.ts';
import type { RowMeasure } from './row-facts.ts';

/** What is shown over the chart. */
export type PlanView = 'strands' | 'live' | 'loose-ends' | 'long-carries' | 'worst-rows';

export interface Plans {
  /** Of the quick plan and the full one; null until it is made. */
  readonly quick: Planned | null;
  readonly full: Planned | null;
  /** What a careful person would need who doesn't look ahead. */
  readonly careful: Figures | null;
  /** Why there is no plan, and what to do; empty where all is well. */
  readonly problem: string;
  /** Share of the full plan that is done; null while none is being made. */
  readonly progress: number | null;
  /** False while an answer to the last change is awaited. */
  readonly settled: boolean;
  /** What the hanging took before the last change of a setting, by the quick and the full plan. */
  readonly last: { readonly quick: Figures | null; readonly full: Figures | null } | null;
  /** Settings that are being written and already tried, before they become a step of the history. */
  readonly draft: Partial<Pick<Design, 'tying' | 'swatches'>> | null;

  readonly view: PlanView;
  /** A cell of the chosen strand: it stays chosen when the plan changes. Null where none is. */
  readonly chosen: Cell | null;
  /** The cell cursor, or the cell under the pointer. */
  readonly under: Cell | null;
  /** A cell of the run from which a carry is being pinned, until its other run is chosen. Null where none is. */
  readonly carryFrom: Cell | null;
  /** A pin that would be set by the button that is pointed at; null where there is none. */
  readonly pinAhead: Pin | null;
  /** Knots that are tied; null: all of them. */
  readonly tied: number | null;
  /** What is done next there, once the worker has told. */
  readonly steps: { readonly knots: number; readonly steps: readonly Step[] } | null;
  /** All steps of the row there, once the worker has told. */
  readonly rowSteps: { readonly row: number; readonly steps: readonly Step[] } | null;
  /** Which steps of the whole order are listed; null while the list is not shown. */
  readonly orderWish: OrderWish | null;
  /** Rows of it, from 1, that are near what is seen. */
  readonly rowsNear: readonly number[];
  /** What the worker has told of it. */
  readonly order: {
    readonly wish: OrderWish;
    /** As `listedCounts` gives them. */
    readonly counts: Int32Array;
    /** By row, from 1: those that were asked for so far. */
    readonly steps: ReadonlyMap<number, readonly Step[]>;
  } | null;
  /** Asked for only while they are shown; with pieces of the working length, and with pieces cut to measure. */
  readonly wantsBundles: boolean;
  readonly bundles: {
    readonly effort: 'quick' | 'full';
    readonly whole: Bundles;
    readonly fitted: Bundles;
  } | null;
  /** Carries longer than this are shown. */
  readonly overMm: number;
  readonly rowsBy: RowMeasure;
}

const noPlans: Plans = {
  quick: null,
  full: null,
  careful: null,
  problem: '',
  progress: null,
  settled: false,
  last: null,
  draft: null,
  view: 'strands',
  chosen: null,
  under: null,
  carryFrom: null,
  pinAhead: null,
  tied: null,
  steps: null,
  rowSteps: null,
  orderWish: null,
  rowsNear: [],
  order: null,
  wantsBundles: false,
  bundles: null,
  // About an inch: the trade's limit for a float on a thing that is worn (practice).
  overMm: 25,
  rowsBy: 'live',
};

export const plans = createStore<Plans>(() => noPlans);

export function usePlans<T>(select: (state: Plans) => T): T {
  return useStore(plans, select);
}

export function forgetPlans(): void {
  plans.setState(noPlans);
}

/** The best plan there is so far. */
export function shownPlan({ full, quick }: Pick<Plans, 'full' | 'quick'>): Planned | null {
  return full ?? quick;
}
