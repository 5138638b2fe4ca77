import type { Gauge } from '../gauge/gauge.ts';
import type { TiedBy } from './kept/tied-rows.ts';

/** What is wished of a plan beside the design's own settings and pins. */
export interface PlanWishes {
  /** The gauge to plan with, where it is not the design's own. */
  readonly gauge?: Gauge;
  /** A quick plan takes milliseconds, and a few per cent more pieces than a full one, which may take seconds. */
  readonly effort?: 'quick' | 'full';
  /**
   * At most so many strands shall hang at once between two rows, instead of as the design says; the plan is then a full
   * one. A quick plan asked for without it leaves the design's own wish aside.
   */
  readonly liveWish?: number;
  /** Rows that are tied already, and the plan they were tied by: they stay, and strands go on from where they hang. */
  readonly tied?: TiedBy;
}
