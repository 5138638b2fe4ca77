/** Which runs of a chart are still there after a change, and which of them may still be reached as before. */
import { type Chart, goesRight } from '../chart/chart.ts';
import { BARE } from '../design/codes.ts';
import type { Runs } from './runs.ts';
import type { PlanQuestion } from './strand-choice.ts';

export interface KeptRuns {
  /** For each run of the old chart its number in the new one, -1 where it is no more; and the other way round. */
  readonly newOf: Int32Array;
  readonly oldOf: Int32Array;
  /** For each new run, 1 where the cells within reach of its first knot are bare just where they were. */
  readonly sameReach: Uint8Array;
  /** How many runs have gone, come, or may be reached otherwise. */
  readonly changes: number;
}

/** Both charts are of one size and start corner. */
export function keptRuns(old: PlanQuestion, now: PlanQuestion): KeptRuns {
  const kept = {
    newOf: new Int32Array(old.runs.count).fill(-1),
    oldOf: new Int32Array(now.runs.count).fill(-1),
    sameReach: new Uint8Array(now.runs.count).fill(1),
    changes: 0,
  };
  let i = 0;
  let j = 0;
  while (i < old.runs.count || j < now.runs.count) {
    // Nearly all runs are as they were.
    while (i < old.runs.count && j < now.runs.count && isSame(old.runs, i, now.runs, j)) {
      kept.newOf[i] = j;
      kept.oldOf[j] = i;
      i++;
      j++;
    }
    if (i === old.runs.count && j === now.runs.count) break;
    const order = compare(old, i, now, j);
    kept.changes++;
    if (order <= 0) i++;
    if (order >= 0) j++;
  }
  kept.changes += markReaches(old, now, kept);
  return kept;
}

/** By the place of the first knot in tying order: negative where the old run comes first. */
function compare(old: PlanQuestion, i: number, now: PlanQuestion, j: number): number {
  if (i === old.runs.count) return 1;
  if (j === now.runs.count) return -1;
  const row = now.runs.row[j]!;
  if (old.runs.row[i] !== row) return old.runs.row[i]! - row;
  const further = old.runs.first[i]! - now.runs.first[j]!;
  if (further === 0) return 0;
  return goesRight(now.chart.startCorner, row) ? further : -further;
}

function isSame(old: Runs, i: number, now: Runs, j: number): boolean {
  return (
    old.first[i] === now.first[j] &&
    old.last[i] === now.last[j] &&
    old.row[i] === now.row[j] &&
    old.yarn[i] === now.yarn[j]
  );
}

/** A carry to a run passes only cells of its own row, at most so many as the limit says. */
function markReaches(old: PlanQuestion, now: PlanQuestion, kept: KeptRuns): number {
  let changes = 0;
  const { runs, chart, settings } = now;
  const changed = rowsOtherwiseBare(old.chart, chart);
  for (let run = 0; run < runs.count; run++) {
    const row = runs.row[run]!;
    if (changed[row] === 0 || kept.oldOf[run] === -1) continue;
    const first = runs.first[run]!;
    const low = Math.max(0, first - settings.carryMaxCords);
    const high = Math.min(chart.columns - 1, first + settings.carryMaxCords);
    for (let column = low; column <= high; column++) {
      const cell = row * chart.columns + column;
      if ((chart.cells[cell] === BARE) === (old.chart.cells[cell] === BARE)) continue;
      kept.sameReach[run] = 0;
      changes++;
      break;
    }
  }
  return changes;
}

function rowsOtherwiseBare({ cells: old }: Chart, { cells, columns, rows }: Chart): Uint8Array {
  const changed = new Uint8Array(rows);
  for (let cell = 0; cell < cells.length; cell++) {
    if (cells[cell] !== old[cell] && (cells[cell] === BARE || old[cell] === BARE))
      changed[Math.floor(cell / columns)] = 1;
  }
  return changed;
}
