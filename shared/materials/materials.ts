/**
 * What a hanging takes: the one object behind 'this hanging' on screen, the materials page and `materials --json`.
 * Lengths in mm, masses in g, times in s; rounding happens only where a figure is shown.
 */
import type { YarnId } from '../design/codes.ts';
import type { YarnTally } from '../tying/plan.ts';

export interface YarnNeed extends YarnTally {
  id: YarnId;
  name: string;
  symbol: string;
  color: string;
  /** What is cut from the ball, with the margin for mistakes and swatches. */
  withMarginMm: number;
  /** Mass of what is cut, without margin. */
  massG: number;
  skeinMm: number;
  /** Whole skeins that hold `withMarginMm`. */
  skeins: number;
}

/** Cut cords of one length. */
export interface CordGroup {
  /** How many cut cords (each gives two cords). */
  count: number;
  /** Length of each, as cut. */
  cutMm: number;
  /** Columns that they become, as ranges from 1. */
  columns: { from: number; to: number }[];
}

export interface Materials {
  format: 'larkrow-materials';
  version: 1;
  title: string;
  columns: number;
  rows: number;
  gauge: {
    pitchMm: number;
    rowHeightMm: number;
    /** 'measured' from swatches, or an 'estimate' from the thickness of cord and yarn. */
    source: 'measured' | 'estimate';
    knotsPer10Cm: number;
    rowsPer10Cm: number;
    /** Yarn per knot against the formula for a helix: fitted to swatches, or 1 where none was measured. */
    yarnFactor: number;
    yarnFactorSource: 'measured' | 'estimate';
  };
  finished: { widthMm: number; knottedHeightMm: number; heightWithFringeMm: number };
  dowel: { diameterMm: number; minLengthMm: number; overhangMm: number };
  cords: {
    name: string;
    diameterMm: number;
    /** Cut cords, each folded in half over the dowel. */
    cutCords: number;
    /** One leg is not needed where the chart has an odd number of cords. */
    spareLegs: 0 | 1;
    mountPerLegMm: number;
    groups: CordGroup[];
    totalMm: number;
    massG: number;
    /** A lark's head wider than its two columns makes the hanging spread at the dowel. */
    headWidthMm: number;
    headsSpread: boolean;
  };
  yarns: YarnNeed[];
  totals: {
    knots: number;
    bareCells: number;
    pieces: number;
    strands: number;
    looseEnds: number;
    liveMax: number;
    yarnCutMm: number;
    yarnMassG: number;
    /** Yarn, cord and dowel. */
    massG: number;
    seconds: number;
  };
  tying: { workingLengthMm: number; tailMm: number; margin: number };
}
