import type { Chart } from '../../chart/chart.ts';
import { firstRunOf } from '../question/first-run-of.ts';
import { type Runs, runsInRows } from '../runs.ts';
import { changedRows } from './changed-rows.ts';

/** The runs of a chart that has changed a little: those of the old chart, but for the rows whose cells are others. */
export function repairRuns(old: Chart, runs: Runs, chart: Chart): Runs {
  const isAlike =
    old.columns === chart.columns && old.rows === chart.rows && old.startCorner === chart.startCorner;
  const { first, end } = isAlike ? changedRows(old, chart) : { first: 0, end: chart.rows };
  const between = runsInRows(chart, first, end);
  if (!isAlike) return between;
  const from = firstRunOf(runs, first);
  const to = firstRunOf(runs, end);
  const count = from + between.count + runs.count - to;
  const joined = <T extends Uint8Array | Uint16Array>(into: T, was: T, now: T): T => {
    into.set(was.subarray(0, from));
    into.set(now, from);
    into.set(was.subarray(to), from + now.length);
    return into;
  };
  return {
    count,
    yarn: joined(new Uint8Array(count), runs.yarn, between.yarn),
    row: joined(new Uint16Array(count), runs.row, between.row),
    first: joined(new Uint16Array(count), runs.first, between.first),
    last: joined(new Uint16Array(count), runs.last, between.last),
  };
}
