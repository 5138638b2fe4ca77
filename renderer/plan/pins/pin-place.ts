/** Where a pin is set: the run that a cell belongs to, and the pins that it can have there. */
import { type Chart, goesRight } from '../../../shared/chart/chart.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { BARE } from '../../../shared/design/codes.ts';
import type { Pin } from '../../../shared/design/schema.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { runsOf } from '../../../shared/tying/runs.ts';

/** Row and columns from 0; first and last as they are tied. */
interface RunPlace {
  readonly yarn: number;
  readonly row: number;
  readonly first: number;
  readonly last: number;
}

/** The run that a cell belongs to; null where it is bare, or outside the chart. */
export function runAround(chart: Chart, { row, column }: Cell): RunPlace | null {
  const { cells, columns, rows, startCorner } = chart;
  if (row < 0 || row >= rows || column < 0 || column >= columns) return null;
  const yarn = cells[row * columns + column]!;
  if (yarn === BARE) return null;
  const reach = (step: 1 | -1) => {
    let at = column;
    while (at + step >= 0 && at + step < columns && cells[row * columns + at + step] === yarn) at += step;
    return at;
  };
  const [left, right] = [reach(-1), reach(1)];
  return goesRight(startCorner, row)
    ? { yarn, row, first: left, last: right }
    : { yarn, row, first: right, last: left };
}

/** The strand ends with the run that the cell belongs to; null where the cell is bare. */
export function cutAt(chart: Chart, cell: Cell): Pin | null {
  const run = runAround(chart, cell);
  return run && { kind: 'cut', row: run.row + 1, cord: run.last + 1 };
}

export function noCarryAt({ row, column }: Cell): Pin {
  return { kind: 'no-carry', row: row + 1, cord: column + 1 };
}

/**
 * One strand ties the runs of two cells one after the other, whichever of them is tied first. Two cells of one run mean
 * that run and the next of its yarn. Problems: a bare cell, two yarns, and a run that is its yarn's last.
 */
export function carryBetween(chart: Chart, a: Cell, b: Cell): Result<Pin> {
  const [one, other] = [runAround(chart, a), runAround(chart, b)];
  if (!one || !other)
    return problem('bare-cell', 'No yarn is tied there. Choose a knot for the strand to go on to.');
  if (one.yarn !== other.yarn)
    return problem('two-yarns', 'That is another yarn. Choose a knot of the same yarn.');
  if (one.row === other.row && one.first === other.first) {
    const next = nextOfYarn(chart, one);
    return next
      ? good(carryPin(one, next))
      : problem('last-of-yarn', 'No run of this yarn is tied after it.');
  }
  return good(isBefore(chart, one, other) ? carryPin(one, other) : carryPin(other, one));
}

function carryPin(from: RunPlace, to: RunPlace): Pin {
  return {
    kind: 'carry',
    row: from.row + 1,
    cord: from.last + 1,
    toRow: to.row + 1,
    toCord: to.first + 1,
  };
}

function isBefore({ startCorner }: Chart, a: RunPlace, b: RunPlace): boolean {
  if (a.row !== b.row) return a.row < b.row;
  return goesRight(startCorner, a.row) ? a.first < b.first : a.first > b.first;
}

/** In tying order. */
function nextOfYarn(chart: Chart, run: RunPlace): RunPlace | null {
  const { count, yarn, row, first, last } = runsOf(chart);
  let isPast = false;
  for (let i = 0; i < count; i++) {
    if (isPast && yarn[i] === run.yarn)
      return { yarn: run.yarn, row: row[i]!, first: first[i]!, last: last[i]! };
    isPast ||= row[i] === run.row && first[i] === run.first;
  }
  return null;
}
