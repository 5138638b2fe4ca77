/**
 * Bands of rows that repeat across: in each of their rows the same cords come again and again, from the start corner's side to
 * the other one, so that a maker learns a few cords and ties the rest by heart.
 *
 * A band begins and ends with rows that change; rows of one yarn, which repeat anyhow, may lie between them. Beyond such rows
 * it goes on only where one period holds the other, so that two borders far apart are not told as one of a longer period.
 *
 * Rows that don't repeat as a whole may do so within a border, as wide at the left as at the right; the narrowest border
 * counts.
 */
import { type Chart, goesRight } from './chart.ts';
import { leastPeriod } from './least-period.ts';

export interface Repeat {
  /** First and last row of the band, both in it, from 0. */
  readonly fromRow: number;
  readonly toRow: number;
  /** The left cord of the first whole repeat, from 0: that which lies where row 1 starts. */
  readonly fromColumn: number;
  /** Cords of one repeat: the fewest that repeat in all rows of the band. */
  readonly columns: number;
  /** Whole repeats, side by side. */
  readonly times: number;
  /** Cords beyond the last whole repeat, on the side away from where row 1 starts: a part of one more. */
  readonly leftOver: number;
  /** Cords of the border on each side, which are no part of the band; mostly 0. */
  readonly border: number;
}

/** Fewer are seen at a glance, or are chance. */
const LEAST_TIMES = 3;
const LEAST_ROWS = 2;

/** Broader borders are pictures of their own; so are those that leave less than two thirds of a row between them. */
const WIDEST_BORDER = 12;
const MOST_OF_A_ROW = 1 / 6;

/** From the top down; no row lies in two of them. */
export function repeatsOf(chart: Chart): Repeat[] {
  const widest = Math.min(WIDEST_BORDER, Math.floor(chart.columns * MOST_OF_A_ROW));
  const isTaken = new Uint8Array(chart.rows);
  const repeats: Repeat[] = [];
  for (let border = 0; border <= widest; border++) {
    for (const band of bandsOf(chart, border, isTaken)) {
      isTaken.fill(1, band.fromRow, band.toRow + 1);
      repeats.push(repeatOf(chart, band, border));
    }
  }
  return repeats.sort((a, b) => a.fromRow - b.fromRow);
}

/** Within borders of this width; no band goes over rows that are taken. */
function bandsOf(chart: Chart, border: number, isTaken: Uint8Array): Band[] {
  const within = chart.columns - 2 * border;
  const longest = Math.floor(within / LEAST_TIMES);
  const spare = new Int32Array(within + 1);
  const bands: Band[] = [];
  let band: Band | null = null;
  const close = () => {
    if (band && band.toRow - band.fromRow + 1 >= LEAST_ROWS) bands.push(band);
    band = null;
  };
  for (let row = 0; row < chart.rows; row++) {
    if (isTaken[row]) {
      close();
      continue;
    }
    // A row that comes again after p cords, and has at least 2 p, does so after no other number than multiples of its least
    // one (Fine and Wilf 1965): rows are compared by their least ones alone.
    const period = leastPeriod(chart.cells, row * chart.columns + border, within, spare);
    if (period === 1) continue;
    const repeating: Band | null = period > longest ? null : { fromRow: row, toRow: row, period };
    const joined: Band | null = band && repeating && joinedBand(band, repeating, longest);
    if (!joined) close();
    band = joined ?? repeating;
  }
  close();
  return bands;
}

interface Band {
  readonly fromRow: number;
  readonly toRow: number;
  readonly period: number;
}

/** Null where the two are not one band. */
function joinedBand(above: Band, below: Band, longest: number): Band | null {
  const period = (above.period / commonDivisor(above.period, below.period)) * below.period;
  const isNext = below.fromRow === above.toRow + 1;
  if (period > (isNext ? longest : Math.max(above.period, below.period))) return null;
  return { fromRow: above.fromRow, toRow: below.toRow, period };
}

function repeatOf({ columns, startCorner }: Chart, { fromRow, toRow, period }: Band, border: number): Repeat {
  const within = columns - 2 * border;
  return {
    fromRow,
    toRow,
    fromColumn: goesRight(startCorner, 0) ? border : columns - border - period,
    columns: period,
    times: Math.floor(within / period),
    leftOver: within % period,
    border,
  };
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
