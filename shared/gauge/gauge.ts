/**
 * The gauge: how wide a cord and how high a row comes out when tied, and how much yarn a knot takes. From the
 * maker's swatches where there are any, else an estimate from the thickness of cord and yarn.
 *
 * With D the cord's and d the yarn's diameter, both in mm:
 *   pitch   p = D + 2 d c      the cord, and the yarn on both sides of it, pressed together
 *   row     h = 2 x 2 d c'     two half hitches, each two yarns high, pressed together
 *   knot    L = k x 2 sqrt((pi (D + d))^2 + (h / 2)^2) + p
 * A knot is two turns of a helix (length of a coil: N sqrt((pi D)^2 + P^2)) and the way to the next cord. The
 * compressions c and c' are values from memory, to be measured; k is 1 until a swatch has been measured.
 */
import type { Design } from '../design/design.ts';
import { limits } from '../design/limits.ts';
import type { Swatch, Yarn } from '../design/schema.ts';
import { fringeMm } from './fringe.ts';

type Source = 'measured' | 'estimate';

export interface Gauge {
  /** Width of one cord with its knots. */
  readonly pitchMm: number;
  readonly rowHeightMm: number;
  /** Where pitch and row height come from. */
  readonly source: Source;
  /** k: yarn in the turns of a knot, against the helix. */
  readonly yarnFactor: number;
  readonly yarnFactorSource: Source;
}

export interface Size {
  readonly widthMm: number;
  /** From the first row to the last, without heads and fringe. */
  readonly knottedHeightMm: number;
  /** Down to the end of the longest fringe. */
  readonly heightWithFringeMm: number;
}

type Thickness = Pick<Yarn, 'diameterMm'>;
type Measured = Pick<Design, 'cord' | 'yarns' | 'ground' | 'swatches'>;

/** Values from memory, to be measured: how far yarn is pressed together between cords, and between rows. */
const pressedAcross = 0.5;
const pressedDown = 0.6;

export function gaugeOf(design: Measured): Gauge {
  const ground = groundOf(design);
  const { swatches, cord } = design;
  const measured = swatches.length > 0;
  const pitchMm = measured
    ? slope(swatches.map(({ cords, widthMm }) => [cords, widthMm]))
    : cord.diameterMm + 2 * ground.diameterMm * pressedAcross;
  const rowHeightMm = measured
    ? slope(swatches.map(({ rows, heightMm }) => [rows, heightMm]))
    : 2 * (2 * ground.diameterMm) * pressedDown;
  const yarnFactor = yarnFactorOf(
    swatches,
    helixMm(cord.diameterMm, ground.diameterMm, rowHeightMm),
    pitchMm,
  );
  return {
    pitchMm,
    rowHeightMm,
    source: measured ? 'measured' : 'estimate',
    yarnFactor: yarnFactor ?? 1,
    yarnFactorSource: yarnFactor === null ? 'estimate' : 'measured',
  };
}

/** Yarn in one knot of `yarn`, in mm, with the way to the next cord and without tails. */
export function knotMm({ cord }: Pick<Design, 'cord'>, yarn: Thickness, gauge: Gauge): number {
  return gauge.yarnFactor * helixMm(cord.diameterMm, yarn.diameterMm, gauge.rowHeightMm) + gauge.pitchMm;
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

/**
 * The swatch of so many knots and rows in 10 cm. Counts are kept to 0.1: a swatch holds whole cords and rows, so it
 * is a metre long, over ten times the counts. A gauge too fine for the limits of a swatch gets a shorter one.
 */
export function gaugeFromPer10Cm(knots: number, rows: number): Swatch {
  const across = metreOf(knots, limits.columns);
  const down = metreOf(rows, limits.rows);
  return { widthMm: across.lengthMm, cords: across.count, heightMm: down.lengthMm, rows: down.count };
}

function metreOf(per10Cm: number, most: number): { lengthMm: number; count: number } {
  const perMetre = Math.max(1, Math.round(per10Cm * 10));
  const count = Math.min(perMetre, most);
  return { lengthMm: (count * 1000) / perMetre, count };
}

/** Two turns of yarn around a cord, along the middle of the yarn, rising by one row. */
function helixMm(cordMm: number, yarnMm: number, rowHeightMm: number): number {
  return 2 * Math.hypot(Math.PI * (cordMm + yarnMm), rowHeightMm / 2);
}

/**
 * k from the swatches whose yarn was measured; null where there is none. A swatch is taken to be tied with the
 * ground. Yarn that would not even reach from cord to cord is a slip of measuring: k is then 0, never less.
 */
function yarnFactorOf(swatches: readonly Swatch[], helixMm: number, pitchMm: number): number | null {
  const points = swatches.flatMap(({ yarnMm, knots }): [number, number][] =>
    yarnMm === undefined || knots === undefined ? [] : [[knots * helixMm, yarnMm - knots * pitchMm]],
  );
  return points.length === 0 ? null : Math.max(0, slope(points));
}

/** Least squares through the origin: the slope of y = a x, sum(x y) / sum(x x). */
function slope(points: readonly (readonly [x: number, y: number])[]): number {
  const sum = (of: (x: number, y: number) => number) => points.reduce((total, [x, y]) => total + of(x, y), 0);
  return sum((x, y) => x * y) / sum((x) => x * x);
}

function groundOf({ yarns, ground }: Measured): Yarn {
  const yarn = yarns.find(({ id }) => id === ground);
  if (!yarn) throw new Error(`the design has no yarn ${ground}, its ground`);
  return yarn;
}
