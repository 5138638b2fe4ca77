/**
 * What the maker's swatches tell, by least squares, and how well they tell it.
 *
 * The model: a swatch of n cords measures n p (1 + a) across, where a is its scatter; rows, yarn for so many knots, and
 * cord before and after tying likewise. Scatter is relative, so the squares are those of the logarithms, and the best
 * p is the geometric mean of what each swatch measures per cord. Each swatch counts once, however large it is: what
 * differs from swatch to swatch is the hand, and a wider swatch is not tied by more hands.
 *
 * Swatches that were tied with this cord and this yarn count. While there is none, those of another thickness do,
 * each changed by what the model of `thickness-model.ts` says of the two thicknesses; that is an estimate. With no
 * swatch at all, the model alone is asked. A gauge that the maker tells (`told-gauge.ts`) gives the size in place of all of
 * them; a knot then takes yarn by the k that was measured, where it was.
 *
 * What is told of `knotMm` is the ground's: a swatch is taken to be tied with the ground. All intervals hold the
 * truth in 95 of 100 cases, if the scatter is as stated.
 */
import type { Design } from '../design/design.ts';
import type { Swatch, Yarn } from '../design/schema.ts';
import { meanOf, type Scatter, scatterOf } from './scatter.ts';
import { normalQuantile95 } from './t-quantile.ts';
import {
  helixMm,
  knotFromThicknessMm,
  pitchFromThicknessMm,
  rowHeightFromThicknessMm,
  type Thickness,
} from './thickness-model.ts';
import { measuredSwatches, toldGauge } from './told-gauge.ts';

export type Measured = Pick<Design, 'cord' | 'yarns' | 'ground' | 'swatches'>;

/** A fitted quantity; `low` and `high` are the ends of its 95 % interval. */
export interface Fit {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What the figures of one quantity rest on. */
export interface Basis {
  /**
   * 'told': as the maker wrote it down, not measured; 'other-thickness': swatches of another cord or yarn, changed by
   * the model; 'estimate': the model alone.
   */
  readonly from: 'swatches' | 'told' | 'other-thickness' | 'estimate';
  /** How many swatches measured it. */
  readonly swatches: number;
  /** Null where nothing was measured. */
  readonly scatter: Scatter | null;
}

export interface SwatchFit {
  readonly thickness: Thickness;
  readonly pitchMm: Fit;
  readonly rowHeightMm: Fit;
  readonly size: Basis;
  /** Yarn in one knot of the ground; null where no swatch tells, and `yarnFactor` stands in. */
  readonly knotMm: Fit | null;
  /** k, where no yarn was measured. */
  readonly yarnFactor: Fit;
  readonly yarn: Basis;
  /** How much longer a leg must be than the height it is knotted to, as a share. */
  readonly takeUp: Fit;
  readonly cord: Basis;
}

/**
 * Values from memory, to be measured, as relative standard deviations: how far the model is from a maker's own pitch,
 * row height and k; and a leg as the maker expects it from the leg as it is.
 */
const estimateError = 0.1;
const takeUpError = 0.015;
/** Value from memory: how far a gauge that is told, not measured, is from the maker's own; a relative standard deviation. */
const toldError = 0.05;
/** Value from memory: how much of a change by thickness may be wrong, as a share of the change in logarithms. */
const transferError = 0.25;

export function fitSwatches(design: Measured): SwatchFit {
  const thickness = { cordMm: design.cord.diameterMm, yarnMm: groundOf(design).diameterMm };
  const fit = fitMeasured(design, thickness);
  const told = toldGauge(design.swatches);
  // It was told for the cord and yarn of that day.
  if (!told || !isTiedWith(told, thickness)) return fit;
  const pitchMm = within(told.widthMm / told.cords, normalQuantile95 * toldError);
  const rowHeightMm = within(told.heightMm / told.rows, normalQuantile95 * toldError);
  const size: Basis = { from: 'told', swatches: 0, scatter: null };
  const knotMm = fit.knotMm && knotAt(fit, fit.knotMm, pitchMm.value, rowHeightMm.value);
  return { ...fit, pitchMm, rowHeightMm, size, knotMm };
}

/** The yarn in a knot of another size: k as it was measured, with the same doubt. */
function knotAt({ thickness, ...at }: SwatchFit, knotMm: Fit, pitchMm: number, rowHeightMm: number): Fit {
  const k = (knotMm.value - at.pitchMm.value) / helixMm(thickness, at.rowHeightMm.value);
  const value = Math.max(0, k) * helixMm(thickness, rowHeightMm) + pitchMm;
  const times = value / knotMm.value;
  return { value, low: knotMm.low * times, high: knotMm.high * times };
}

function fitMeasured(design: Measured, thickness: Thickness): SwatchFit {
  const { swatches, isOther } = counting(measuredSwatches(design.swatches), thickness);
  const { across, down, knots, legs } = readingsOf(swatches, thickness);
  const scatter = scatterOf([across, down, knots]);
  const others = isOther ? swatches.map((swatch) => tiedWith(swatch, thickness)) : [];
  const from = isOther ? 'other-thickness' : 'swatches';
  const fitOf = (logs: readonly number[], model: Model) =>
    logs.length > 0 ? fitted(logs, scatter, transferShare(others, model, thickness)) : null;
  return {
    thickness,
    pitchMm: fitOf(across, pitchFromThicknessMm) ?? estimated(pitchFromThicknessMm(thickness)),
    rowHeightMm: fitOf(down, rowHeightFromThicknessMm) ?? estimated(rowHeightFromThicknessMm(thickness)),
    size: basisOf(across, from, scatter),
    knotMm: fitOf(knots, knotFromThicknessMm),
    yarnFactor: estimated(1),
    yarn: basisOf(knots, from, scatter),
    takeUp: takeUpOf(legs, design.cord.takeUp),
    cord: basisOf(legs, from, scatterOf([legs])),
  };
}

type Model = (thickness: Thickness) => number;

/** What the swatches measure per cord, row and knot, and of a cord before tying against after, as logarithms. */
function readingsOf(swatches: readonly Swatch[], to: Thickness) {
  const across: number[] = [];
  const down: number[] = [];
  const knots: number[] = [];
  const legs: number[] = [];
  for (const swatch of swatches) {
    const own = tiedWith(swatch, to);
    across.push(Math.log((swatch.widthMm / swatch.cords) * change(pitchFromThicknessMm, own, to)));
    down.push(Math.log((swatch.heightMm / swatch.rows) * change(rowHeightFromThicknessMm, own, to)));
    if (swatch.yarnMm !== undefined && swatch.knots !== undefined) {
      knots.push(Math.log((swatch.yarnMm / swatch.knots) * change(knotFromThicknessMm, own, to)));
    }
    if (swatch.cordBeforeMm !== undefined && swatch.cordAfterMm !== undefined) {
      legs.push(Math.log(swatch.cordBeforeMm / swatch.cordAfterMm));
    }
  }
  return { across, down, knots, legs };
}

/** The swatches of this cord and yarn; all of them while there is none. */
function counting(
  all: readonly Swatch[],
  thickness: Thickness,
): { swatches: readonly Swatch[]; isOther: boolean } {
  const own = all.filter((swatch) => isTiedWith(swatch, thickness));
  return own.length > 0 ? { swatches: own, isOther: false } : { swatches: all, isOther: all.length > 0 };
}

function isTiedWith(swatch: Swatch, thickness: Thickness): boolean {
  const { cordMm, yarnMm } = tiedWith(swatch, thickness);
  return cordMm === thickness.cordMm && yarnMm === thickness.yarnMm;
}

/** A swatch that does not tell was tied with what the hanging is tied with. */
function tiedWith({ cordDiameterMm, yarnDiameterMm }: Swatch, { cordMm, yarnMm }: Thickness): Thickness {
  return { cordMm: cordDiameterMm ?? cordMm, yarnMm: yarnDiameterMm ?? yarnMm };
}

function change(model: Model, from: Thickness, to: Thickness): number {
  return from.cordMm === to.cordMm && from.yarnMm === to.yarnMm ? 1 : model(to) / model(from);
}

/** What the changes by thickness may be wrong by: all of them err alike, so the mean of their sizes. */
function transferShare(from: readonly Thickness[], model: Model, to: Thickness): number {
  if (from.length === 0) return 0;
  return transferError * meanOf(from.map((each) => Math.abs(Math.log(change(model, each, to)))));
}

function fitted(logs: readonly number[], { share, quantile }: Scatter, transferShare: number): Fit {
  const own = share / Math.sqrt(logs.length);
  return within(Math.exp(meanOf(logs)), Math.hypot(quantile * own, normalQuantile95 * transferShare));
}

function estimated(value: number): Fit {
  return within(value, normalQuantile95 * estimateError);
}

function within(value: number, logHalfWidth: number): Fit {
  return { value, low: value * Math.exp(-logHalfWidth), high: value * Math.exp(logHalfWidth) };
}

/** A cord can't come out longer than it was: less is a slip of measuring, and take-up is then 0. */
function takeUpOf(legs: readonly number[], told: number): Fit {
  const leg =
    legs.length > 0 ? fitted(legs, scatterOf([legs]), 0) : within(1 + told, normalQuantile95 * takeUpError);
  return {
    value: legs.length > 0 ? Math.max(0, leg.value - 1) : told,
    low: Math.max(0, leg.low - 1),
    high: Math.max(0, leg.high - 1),
  };
}

function basisOf(logs: readonly number[], from: Basis['from'], scatter: Scatter): Basis {
  if (logs.length === 0) return { from: 'estimate', swatches: 0, scatter: null };
  return { from, swatches: logs.length, scatter };
}

function groundOf({ yarns, ground }: Measured): Yarn {
  const yarn = yarns.find(({ id }) => id === ground);
  if (!yarn) throw new Error(`the design has no yarn ${ground}, its ground`);
  return yarn;
}
