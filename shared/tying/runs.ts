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
  const count = countRuns(chart);
  const runs = {
    count,
    yarn: new Uint8Array(count),
    row: new Uint16Array(count),
    first: new Uint16Array(count),
    last: new Uint16Array(count),
  };
  const { cells, columns, rows, startCorner } = chart;
  let i = -1;
  for (let row = 0; row < rows; row++) {
    const right = goesRight(startCorner, row);
    let before: number = BARE;
    for (let tied = 0; tied < columns; tied++) {
      const column = right ? tied : columns - 1 - tied;
      const code = cells[row * columns + column]!;
      if (code !== BARE && code !== before) {
        i++;
        runs.yarn[i] = code;
        runs.row[i] = row;
        runs.first[i] = column;
      }
      if (code !== BARE) runs.last[i] = column;
      before = code;
    }
  }
  return runs;
}

/** Knots of run `i`. */
export function knotsOf({ first, last }: Runs, i: number): number {
  return Math.abs(last[i]! - first[i]!) + 1;
}

/** As many runs whichever way the rows go. */
function countRuns({ cells, columns }: Chart): number {
  let count = 0;
  for (let cell = 0; cell < cells.length; cell++) {
    const code = cells[cell]!;
    if (code !== BARE && (cell % columns === 0 || code !== cells[cell - 1])) count++;
  }
  return count;
}
