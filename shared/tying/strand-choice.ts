/**
 * What a planner decides, and all of it: which run a strand ties after which, and where it goes on with a fresh
 * piece. `assemble-plan.ts` makes the plan of it. Runs are counted in tying order from 0 (see `runs.ts`).
 */
import type { Chart } from '../chart/chart.ts';
import type { PlanSettings } from './plan.ts';
import type { Runs } from './runs.ts';
import type { Tenths } from './tenths.ts';

export interface StrandChoice {
  /** For each run, the run that its strand has tied before it; -1 where a strand begins. */
  readonly previous: Int32Array;
  /** Pairs of a run and a number of its knots, in tying order: a fresh piece begins after so many knots of it. */
  readonly joins: readonly number[];
}

export interface PlanQuestion {
  readonly chart: Chart;
  readonly runs: Runs;
  readonly settings: PlanSettings;
  readonly tenths: Tenths;
}

export type Planner = (question: PlanQuestion) => StrandChoice;
