/**
 * The plan of strands: which strand ties what, what is carried, where a piece ends. This is the published object
 * that `plan --json` prints, and the one value from which screens, pages and materials take their figures.
 *
 * Rows and cords count from 1. Lengths in mm, multiples of 0.1: inside the planner they are whole tenths. Only the
 * pitch and the row height keep four decimals, since they are multiplied before a carry is rounded.
 */
import type { YarnId } from '../design/codes.ts';
import type { Pin, StartCorner } from '../design/schema.ts';

export const PLAN_FORMAT = 'larkrow-plan';
export const PLAN_VERSION = 1;
/** Goes up when the same design and settings would be planned otherwise. */
export const PLANNER_VERSION = 2;

/** Tied from cord `from` to cord `to` in the row's direction, so from > to where the row goes left. */
export interface Stretch {
  row: number;
  from: number;
  to: number;
}

/** One cut length of yarn. usedMm = knottedMm + carriedMm + two tails; leftOverMm = cutMm - usedMm. */
export interface Piece {
  stretches: Stretch[];
  knots: number;
  knottedMm: number;
  carriedMm: number;
  usedMm: number;
  cutMm: number;
  leftOverMm: number;
}

/** Consecutive stretches of a piece are linked by a carry or a turn, consecutive pieces by a join. */
export interface Strand {
  yarn: YarnId;
  pieces: Piece[];
}

export interface PlanSettings {
  pitchMm: number;
  rowHeightMm: number;
  knotMm: Record<YarnId, number>;
  slack: number;
  workingLengthMm: number;
  tailMm: number;
  effortMm: number;
  carryMaxCords: number;
  carryMaxRows: number;
  rowPriceMm: number;
  /** Share of the working length that is kept free of each piece; undefined, so not in the JSON, where nothing is. */
  reserveShare?: number | undefined;
  /** No more strands than this shall hang at once, where the plan was made to keep to that; else undefined, so not in the JSON. */
  liveWish?: number | undefined;
}

export interface PlanTotals {
  knots: number;
  strands: number;
  pieces: number;
  joins: number;
  looseEnds: number;
  /** Turns are not counted among the carries; `carriedMm` holds both. */
  carries: number;
  turns: number;
  carriedMm: number;
  usedMm: number;
  cutMm: number;
  /** Strands that hang at a boundary between two rows: the most, and the mean to four decimals. */
  liveMax: number;
  liveMean: number;
  /** What the planner weighs: attach x pieces + carriedMm + row price x rows parked. No length of anything. */
  costMm: number;
}

export interface YarnTally {
  knots: number;
  strands: number;
  pieces: number;
  knottedMm: number;
  carriedMm: number;
  tailsMm: number;
  usedMm: number;
  cutMm: number;
  leftOverMm: number;
}

export interface Plan {
  format: typeof PLAN_FORMAT;
  version: typeof PLAN_VERSION;
  columns: number;
  rows: number;
  startCorner: StartCorner;
  plannerVersion: typeof PLANNER_VERSION;
  /** SHA-256, in hex, of the chart as `chart --json` prints it in canonical form. */
  chartHash: string;
  /** The design's pins that this plan obeys; of a careful person's, who knows of none, always empty. */
  pins: readonly Pin[];
  /** Rows from the top that were tied already, by an earlier plan. */
  frozenRows: number;
  settings: PlanSettings;
  /** In the order in which they are attached. */
  strands: Strand[];
  totals: PlanTotals;
  /** Only yarns that tie at least one knot. */
  perYarn: Record<YarnId, YarnTally>;
}

/** A plan that nobody publishes: it is not tied to its chart, whose hash takes longer than a quick plan's repair. */
export type PlainPlan = Omit<Plan, 'chartHash'>;
