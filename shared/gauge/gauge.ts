/**
 * The gauge: how wide a cord and how high a row comes out when tied, and how much yarn a knot takes. From the
 * maker's swatches where there are any (`fit-swatches.ts`), or as the maker tells it (`told-gauge.ts`); else an
 * estimate from the thickness of cord and yarn (`thickness-model.ts`). With D the cord's and d the yarn's diameter,
 * p the pitch and h the row height, a knot takes
 *   L = k x 2 sqrt((pi (D + d))^2 + (h / 2)^2) + p
 * How sure the gauge is of itself, and what follows from it for every length, is in `gauge-spread.ts`.
 */
import type { Design } from '../design/design.ts';
import type { Yarn } from '../design/schema.ts';
import { type Basis, fitSwatches, type Measured } from './fit-swatches.ts';
import { fringeMm } from './fringe.ts';
import { helixMm, type Thickness } from './thickness-model.ts';

type Source = 'measured' | 'estimate';

export interface Gauge {
  /** Width of one cord with its knots. */
  readonly pitchMm: number;
  readonly rowHeightMm: number;
  /** Where pitch and row height come from: 'measured' only where a swatch was tied with this cord and this yarn. */
  readonly source: Source;
  /** k: yarn in the turns of a knot, against the helix. */
  readonly yarnFactor: number;
  readonly yarnFactorSource: Source;
  /** How much longer a leg must be than the height it is knotted to, as a share: the cord's own until measured. */
  readonly takeUp: number;
  readonly takeUpSource: Source;
}

export interface Size {
  readonly widthMm: number;
  /** From the first row to the last, without heads and fringe. */
  readonly knottedHeightMm: number;
  /** Down to the end of the longest fringe. */
  readonly heightWithFringeMm: number;
}

export function gaugeOf(design: Measured): Gauge {
  const fit = fitSwatches(design);
  return gaugeFrom({
    thickness: fit.thickness,
    pitchMm: fit.pitchMm.value,
    rowHeightMm: fit.rowHeightMm.value,
    knotMm: fit.knotMm?.value ?? null,
    yarnFactor: fit.yarnFactor.value,
    takeUp: fit.takeUp.value,
    source: sourceOf(fit.size),
    yarnFactorSource: sourceOf(fit.yarn),
    takeUpSource: sourceOf(fit.cord),
  });
}

/** The quantities that a gauge is made of. `knotMm` is the ground's, as measured; null: `yarnFactor` stands in. */
export interface GaugeValues extends Gauge {
  readonly thickness: Thickness;
  readonly knotMm: number | null;
}

/** Yarn that would not even reach from cord to cord is a slip of measuring: k is then 0, never less. */
export function gaugeFrom({ thickness, knotMm, ...gauge }: GaugeValues): Gauge {
  if (knotMm === null) return gauge;
  const turnsMm = knotMm - gauge.pitchMm;
  return { ...gauge, yarnFactor: Math.max(0, turnsMm / helixMm(thickness, gauge.rowHeightMm)) };
}

/** Yarn in one knot of `yarn`, in mm, with the way to the next cord and without tails. */
export function knotMm(
  { cord }: Pick<Design, 'cord'>,
  yarn: Pick<Yarn, 'diameterMm'>,
  { yarnFactor, rowHeightMm, pitchMm }: Pick<Gauge, 'yarnFactor' | 'rowHeightMm' | 'pitchMm'>,
): number {
  return yarnFactor * helixMm({ cordMm: cord.diameterMm, yarnMm: yarn.diameterMm }, rowHeightMm) + pitchMm;
}

/** How large the hanging comes out. */
export function sizeOf(
  { columns, rows, fringe }: Pick<Design, 'columns' | 'rows' | 'fringe'>,
  { pitchMm, rowHeightMm }: Pick<Gauge, 'pitchMm' | 'rowHeightMm'>,
): Size {
  const knottedHeightMm = rows * rowHeightMm;
  const longestMm = fringeMm(columns, fringe).reduce((a, b) => Math.max(a, b), 0);
  return { widthMm: columns * pitchMm, knottedHeightMm, heightWithFringeMm: knottedHeightMm + longestMm };
}

/** Whole cords nearest to a width; at least one. */
export function cordsForWidth(widthMm: number, { pitchMm }: Pick<Gauge, 'pitchMm'>): number {
  return Math.max(1, Math.round(widthMm / pitchMm));
}

/** Whole rows nearest to a knotted height; at least one. */
export function rowsForHeight(heightMm: number, { rowHeightMm }: Pick<Gauge, 'rowHeightMm'>): number {
  return Math.max(1, Math.round(heightMm / rowHeightMm));
}

function sourceOf({ from }: Basis): Source {
  return from === 'swatches' ? 'measured' : 'estimate';
}
