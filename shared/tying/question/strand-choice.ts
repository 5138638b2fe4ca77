/**
 * What a planner decides, and all of it: which run a strand ties after which, and where it goes on with a fresh
 * piece. `assemble-plan.ts` makes the plan of it. Runs are counted in tying order from 0 (see `runs.ts`).
 */
import type { Chart } from '../../chart/chart.ts';
import type { PinnedRuns } from '../pins/pinned-runs.ts';
import type { PlanSettings } from '../plan.ts';
import type { Runs } from '../runs.ts';
import type { Tenths } from '../tenths.ts';

export interface StrandChoice {
  /** For each run, the run that its strand has tied before it; -1 where a strand begins. */
  readonly previous: Int32Array;
  /** Pairs of a run and a number of its knots, in tying order: a fresh piece begins after so many knots of it. */
  readonly joins: readonly number[];
}

/** Rows that are tied already. What was chosen there stays, and strands that hang below them may be carried on. */
export interface TiedRows {
  /** How many rows, from the top. */
  readonly rows: number;
  /** The choice for the runs of these rows: `previous` has one entry for each of them. */
  readonly choice: StrandChoice;
  /** For each of these runs, what is left in the piece that hangs after it, in tenths; -1 where none hangs. */
  readonly roomAfter: Float64Array;
}

export interface PlanQuestion {
  readonly chart: Chart;
  readonly runs: Runs;
  readonly settings: PlanSettings;
  readonly tenths: Tenths;
  readonly tied?: TiedRows;
  /** What the maker's pins demand of these runs; absent where nothing is pinned. */
  readonly pinned?: PinnedRuns;
}

export type Planner = (question: PlanQuestion) => StrandChoice;
