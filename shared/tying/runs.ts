/**
 * The chart as runs: the longest stretches of one yarn in a row, in tying order. Rows alternate direction from the
 * start corner, also after bare rows; bare cells belong to no run and end one.
 *
 * Runs are columns of numbers, not objects: a chart of 400 x 600 cells may have 240,000 of them.
 */
import { type Chart, goesRight } from '../chart/chart.ts';
import { BARE } from '../design/codes.ts';

/** Run `i` is the i-th that is tied. Rows and columns from 0. */
export interface Runs {
  readonly count: number;
  /** Code of the yarn. */
  readonly yarn: Uint8Array;
  readonly row: Uint16Array;
  /** Column of the first knot tied, and of the last: first > last where the row goes left. */
  readonly first: Uint16Array;
  readonly last: Uint16Array;
}

export function runsOf(chart: Chart): Runs {
  return runsInRows(chart, 0, chart.rows);
}

/** The runs of the rows from `firstRow` to before `endRow`, from 0, as if the others were bare. */
export function runsInRows(chart: Chart, firstRow: number, endRow: number): Runs {
  const count = countRuns(chart, firstRow, endRow);
  const runs = {
    count,
    yarn: new Uint8Array(count),
    row: new Uint16Array(count),
    first: new Uint16Array(count),
    last: new Uint16Array(count),
  };
  const { cells, columns, startCorner } = chart;
  let i = -1;
  for (let row = firstRow; row < endRow; row++) {
    const right = goesRight(startCorner, row);
    const step = right ? 1 : -1;
    let before: number = BARE;
    for (let column = right ? 0 : columns - 1; column >= 0 && column < columns; column += step) {
      const code = cells[row * columns + column]!;
      if (code === before) continue;
      if (before !== BARE) runs.last[i] = column - step;
      if (code !== BARE) {
        i++;
        runs.yarn[i] = code;
        runs.row[i] = row;
        runs.first[i] = column;
      }
      before = code;
    }
    if (before !== BARE) runs.last[i] = right ? columns - 1 : 0;
  }
  return runs;
}

/** Knots of run `i`. */
export function knotsOf({ first, last }: Runs, i: number): number {
  return Math.abs(last[i]! - first[i]!) + 1;
}

/** As many runs whichever way the rows go. */
function countRuns({ cells, columns }: Chart, firstRow: number, endRow: number): number {
  let count = 0;
  for (let start = firstRow * columns; start < endRow * columns; start += columns) {
    let before: number = BARE;
    for (let cell = start; cell < start + columns; cell++) {
      const code = cells[cell]!;
      if (code !== before && code !== BARE) count++;
      before = code;
    }
  }
  return count;
}
