/**
 * Which runs of a chart are still there after a change, and which of them may still be reached as before. Above the rows
 * that have changed all are as they were; below them too, but for how many runs come before. Only between are they looked
 * at one by one.
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import { BARE } from '../../design/codes.ts';
import type { SpareArrays } from '../cover/spare-arrays.ts';
import { firstRunOf } from '../question/first-run-of.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import type { Runs } from '../runs.ts';
import { changedRows } from './changed-rows.ts';

/** A run that is not in the other chart. */
export const GONE = -2;

export class KeptRuns {
  /** The runs of the changed rows: the numbers from `first` to before `oldEnd` in the old chart, to `newEnd` in the new one. */
  readonly first: number;
  readonly oldEnd: number;
  readonly newEnd: number;
  /** How many runs have gone, come, or may be reached otherwise. */
  readonly changes: number;
  /** For each old run of the changed rows, its number in the new chart, GONE where it is no more; and the other way round. */
  readonly #newOf: Int32Array;
  readonly #oldOf: Int32Array;
  /** For each new run of these rows, 1 where the cells within reach of its first knot are bare just where they were. */
  readonly #sameReach: Uint8Array;
  readonly #spare: SpareArrays;

  /** Both charts are of one size and start corner. */
  constructor(old: PlanQuestion, now: PlanQuestion, spare: SpareArrays) {
    this.#spare = spare;
    const rows = changedRows(old.chart, now.chart);
    this.first = firstRunOf(now.runs, rows.first);
    this.oldEnd = firstRunOf(old.runs, rows.end);
    this.newEnd = firstRunOf(now.runs, rows.end);
    this.#newOf = new Int32Array(this.oldEnd - this.first).fill(GONE);
    this.#oldOf = new Int32Array(this.newEnd - this.first).fill(GONE);
    this.#sameReach = new Uint8Array(this.newEnd - this.first).fill(1);
    this.changes = this.#match(old, now) + this.#markReaches(old, now, rows);
  }

  /** Whether the run of the new chart is none of the old one. */
  isNew(run: number): boolean {
    return run >= this.first && run < this.newEnd && this.#oldOf[run - this.first] === GONE;
  }

  /** What was known of each old run, for each new one; 0 for those that are new. */
  moved(known: Float64Array): Float64Array {
    const moved = this.#spare.floats(known.length + this.newEnd - this.oldEnd);
    moved.set(known.subarray(0, this.first));
    moved.set(known.subarray(this.oldEnd), this.newEnd);
    this.#oldOf.forEach((was, i) => {
      moved[this.first + i] = was === GONE ? 0 : known[was]!;
    });
    return moved;
  }

  /** The like where what was known is a run, or -1: GONE where that run is no more, and for runs that are new. */
  movedRuns(known: Int32Array): Int32Array {
    const { first, oldEnd, newEnd } = this;
    const gained = newEnd - oldEnd;
    const newOf = this.#newOf;
    const moved = this.#spare.ints(known.length + gained);
    const move = (run: number) => (run < first ? run : run >= oldEnd ? run + gained : newOf[run - first]!);
    for (let run = 0; run < first; run++) moved[run] = move(known[run]!);
    for (let run = newEnd; run < moved.length; run++) moved[run] = move(known[run - gained]!);
    this.#oldOf.forEach((was, i) => {
      moved[first + i] = was === GONE ? GONE : move(known[was]!);
    });
    return moved;
  }

  /** Whether the cells within reach of a new run's first knot are bare just where they were. */
  isReachedAsBefore(run: number): boolean {
    return run < this.first || run >= this.newEnd || this.#sameReach[run - this.first] === 1;
  }

  /** Gives how many runs have gone or come. */
  #match(old: PlanQuestion, now: PlanQuestion): number {
    let changes = 0;
    let i = this.first;
    let j = this.first;
    while (i < this.oldEnd || j < this.newEnd) {
      if (i < this.oldEnd && j < this.newEnd && isSame(old.runs, i, now.runs, j)) {
        this.#newOf[i - this.first] = j;
        this.#oldOf[j - this.first] = i;
        i++;
        j++;
        continue;
      }
      const order = i === this.oldEnd ? 1 : j === this.newEnd ? -1 : compare(old.runs, i, now, j);
      changes++;
      if (order <= 0) i++;
      if (order >= 0) j++;
    }
    return changes;
  }

  /** A carry to a run passes only cells of its own row, at most so many as the limit says. */
  #markReaches(old: PlanQuestion, now: PlanQuestion, rows: { first: number; end: number }): number {
    let changes = 0;
    const { runs, chart, settings } = now;
    const changed = rowsOtherwiseBare(old.chart, chart, rows);
    for (let run = this.first; run < this.newEnd; run++) {
      const row = runs.row[run]!;
      if (changed[row - rows.first] === 0 || this.#oldOf[run - this.first] === GONE) continue;
      const first = runs.first[run]!;
      const low = Math.max(0, first - settings.carryMaxCords);
      const high = Math.min(chart.columns - 1, first + settings.carryMaxCords);
      for (let column = low; column <= high; column++) {
        const cell = row * chart.columns + column;
        if ((chart.cells[cell] === BARE) === (old.chart.cells[cell] === BARE)) continue;
        this.#sameReach[run - this.first] = 0;
        changes++;
        break;
      }
    }
    return changes;
  }
}

function isSame(old: Runs, i: number, now: Runs, j: number): boolean {
  return (
    old.first[i] === now.first[j] &&
    old.last[i] === now.last[j] &&
    old.row[i] === now.row[j] &&
    old.yarn[i] === now.yarn[j]
  );
}

/** By the place of the first knot in tying order: negative where the old run comes first. */
function compare(old: Runs, i: number, { runs, chart }: PlanQuestion, j: number): number {
  const row = runs.row[j]!;
  if (old.row[i] !== row) return old.row[i]! - row;
  const further = old.first[i]! - runs.first[j]!;
  return goesRight(chart.startCorner, row) ? further : -further;
}

/** For each row from `first` to before `end`, 1 where a cell has become bare, or is no longer. */
function rowsOtherwiseBare(
  { cells: old }: Chart,
  { cells, columns }: Chart,
  { first, end }: { first: number; end: number },
): Uint8Array {
  const changed = new Uint8Array(end - first);
  for (let cell = first * columns; cell < end * columns; cell++) {
    if (cells[cell] !== old[cell] && (cells[cell] === BARE || old[cell] === BARE))
      changed[Math.floor(cell / columns) - first] = 1;
  }
  return changed;
}
