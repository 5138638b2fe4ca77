/**
 * What a hanging takes: the one object behind 'this hanging' on screen, the materials page and `materials --json`.
 * Lengths in mm, masses in g, times in s; rounding happens only where a figure is shown.
 *
 * Beside figures that follow from the gauge stands `uncertain`: the same figures with the 95 % interval that the
 * maker's swatches leave open.
 */
import type { YarnId } from '../design/codes.ts';
import type { YarnTally } from '../tying/plan.ts';
import type { Uncertain } from '../units/uncertain.ts';
import type { Buying } from './buying.ts';
import type { Cost } from './cost.ts';
import type { TiedByHand } from './plan-by-hand.ts';
import type { UncertainNeed } from './uncertain-needs.ts';

export interface YarnNeed extends YarnTally, Buying {
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
  /**
   * This plan tied by the loosest hand that the swatches leave open. `skeins` are whole ones that hold its `cutMm`
   * without any margin: for a looser hand, the margin is there.
   */
  ifLoose: TiedByHand & { skeins: number };
  uncertain: UncertainNeed;
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

/** What figures of the gauge rest on, for the person as a sentence. */
export interface GaugeBasis {
  /** 'told': written down by the maker, not measured; 'other-thickness': swatches of another cord or yarn; 'estimate': the thickness of cord and yarn alone. */
  from: 'swatches' | 'told' | 'other-thickness' | 'estimate';
  /** How many swatches measured it. */
  swatches: number;
  /** By how much one swatch differs from another, a relative standard deviation; null where nothing was measured. */
  scatterShare: number | null;
  /** 'prior': a value from memory, since nothing was measured twice. */
  scatterFrom: 'swatches' | 'prior' | null;
  sentence: string;
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
    /** 'measured' from swatches; else an 'estimate', of which `basis` says where it comes from. */
    source: 'measured' | 'estimate';
    knotsPer10Cm: number;
    rowsPer10Cm: number;
    /** Yarn per knot against the formula for a helix: fitted to swatches, or 1 where none was measured. */
    yarnFactor: number;
    yarnFactorSource: 'measured' | 'estimate';
    /** How much longer a leg must be than the height it is knotted to, as a share: measured, or as the design has it. */
    takeUp: number;
    takeUpSource: 'measured' | 'estimate';
    /** Yarn in one knot of the ground. */
    knotMm: number;
    uncertain: {
      pitchMm: Uncertain;
      rowHeightMm: Uncertain;
      yarnFactor: Uncertain;
      knotMm: Uncertain;
      takeUp: Uncertain;
    };
    /** What pitch and row height, yarn per knot, and take-up rest on. */
    basis: { size: GaugeBasis; yarn: GaugeBasis; cord: GaugeBasis };
  };
  finished: {
    widthMm: number;
    knottedHeightMm: number;
    heightWithFringeMm: number;
    uncertain: { widthMm: Uncertain; knottedHeightMm: Uncertain; heightWithFringeMm: Uncertain };
  };
  dowel: {
    diameterMm: number;
    /** The picture or all its lark's heads, whichever is wider, and the overhangs. */
    minLengthMm: number;
    overhangMm: number;
    uncertain: { minLengthMm: Uncertain };
  };
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
    uncertain: { totalMm: Uncertain };
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
    uncertain: { yarnCutMm: Uncertain; yarnUsedMm: Uncertain; yarnMassG: Uncertain; massG: Uncertain };
  };
  cost: Cost;
  /** `fitted`: each piece is cut as long as it is used; else all are cut at the working length. */
  tying: { workingLengthMm: number; tailMm: number; margin: number; fitted: boolean };
}
