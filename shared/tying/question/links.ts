/**
 * The carries that are possible: for each run, the runs of its yarn that a strand may have tied right before it.
 *
 * A strand may be carried from run i to a later run j where j's first knot lies within the limits of i's last, where
 * no cell of j's row is bare between the two, and where a piece can hold the carry with a knot on either side. A
 * carry that costs as much as a fresh piece is left out: to cut there is never dearer. So is what the maker's pins
 * forbid, and a carry that they demand: nothing is to be chosen there. Of runs that are tied already
 * only those are carried on whose strand hangs, and only as far as its piece reaches.
 *
 * Lists are made when they are asked for and kept, since a repaired plan looks at a few runs of many. One list takes
 * as long as the reach is wide.
 */
import { BARE } from '../../design/codes.ts';
import { firstRunOf } from './first-run-of.ts';
import type { PlanQuestion } from './strand-choice.ts';

export class Links {
  /** The links of all lists made so far: the run before, and what the link costs in tenths, carry and rows parked. */
  from: Int32Array;
  cost: Float64Array;
  #size = 0;
  readonly #question: PlanQuestion;
  /** Where a run's list begins among the links, counted from 1, 0 where it has not been made, and how many it has. */
  readonly #begins: Int32Array;
  readonly #counts: Int32Array;
  readonly #reach: Reach;
  /** For each row its runs by their cells, made when it is first looked at. */
  readonly #rows: (RowOfRuns | undefined)[] = [];

  constructor(question: PlanQuestion) {
    const { runs } = question;
    this.#question = question;
    this.#reach = reachOf(question);
    this.#begins = new Int32Array(runs.count);
    this.#counts = new Int32Array(runs.count);
    this.from = new Int32Array(1024);
    this.cost = new Float64Array(1024);
  }

  /** Where the links to `run` begin in `from` and `cost`, which may be other arrays after this call. */
  before(run: number): number {
    if (this.#begins[run] === 0) this.#list(run);
    return this.#begins[run]! - 1;
  }

  /** How many links lead to `run`, once `before` was asked. */
  count(run: number): number {
    return this.#counts[run]!;
  }

  /** Calls `visit` for each run that a strand may tie right after `run`, with what that link costs. */
  after(run: number, visit: (to: number, cost: number) => void): void {
    const { runs, chart } = this.#question;
    const { width, stride, costs, carries } = this.#reach;
    const column = runs.last[run]!;
    const top = runs.row[run]!;
    const most = this.#longestCarry(run);
    const pinned = this.#question.pinned;
    const firstFree = this.#question.tied?.choice.previous.length ?? 0;
    for (let rows = 0; rows < width.length && top + rows < chart.rows; rows++) {
      const row = (top + rows) * chart.columns;
      if (chart.cells[row + column] === BARE) continue;
      const { startAt } = this.#row(top + rows);
      const low = this.#openTo(row, column, -width[rows]!);
      const high = this.#openTo(row, column, width[rows]!);
      for (let at = low; at <= high; at++) {
        const to = startAt[at]! - 1;
        if (to <= run || to < firstFree || runs.yarn[to] !== runs.yarn[run]) continue;
        const over = rows * stride + Math.abs(at - column);
        if (carries[over]! <= most && (!pinned || pinned.mayLink(run, to))) visit(to, costs[over]!);
      }
    }
  }

  #list(run: number): void {
    const { runs, chart, tied, pinned } = this.#question;
    const { width, stride, costs, carries } = this.#reach;
    const begin = this.#size;
    this.#begins[run] = begin + 1;
    if (tied && run < tied.choice.previous.length) return;
    const yarn = runs.yarn[run]!;
    const column = runs.first[run]!;
    const bottom = runs.row[run]! * chart.columns;
    const leftmost = this.#openTo(bottom, column, -(stride - 1));
    const rightmost = this.#openTo(bottom, column, stride - 1);
    for (let rows = 0; rows < width.length && rows <= runs.row[run]!; rows++) {
      const { endAt } = this.#row(runs.row[run]! - rows);
      const high = Math.min(rightmost, column + width[rows]!);
      for (let at = Math.max(leftmost, column - width[rows]!); at <= high; at++) {
        const from = endAt[at]! - 1;
        if (from === -1 || from >= run || runs.yarn[from] !== yarn) continue;
        if (pinned && !pinned.mayLink(from, run)) continue;
        const over = rows * stride + Math.abs(at - column);
        if (carries[over]! <= this.#longestCarry(from)) this.#add(from, costs[over]!);
      }
    }
    this.#counts[run] = this.#size - begin;
  }

  #row(row: number): RowOfRuns {
    const known = this.#rows[row];
    if (known) return known;
    const { runs, chart } = this.#question;
    const made = { endAt: new Int32Array(chart.columns), startAt: new Int32Array(chart.columns) };
    for (let run = firstRunOf(runs, row); run < runs.count && runs.row[run] === row; run++) {
      made.endAt[runs.last[run]!] = run + 1;
      made.startAt[runs.first[run]!] = run + 1;
    }
    this.#rows[row] = made;
    return made;
  }

  /** How far from `column` the row is without bare cells, at most `by` cells: to the left where that is negative. */
  #openTo(row: number, column: number, by: number): number {
    const { cells, columns } = this.#question.chart;
    const step = Math.sign(by);
    let at = column;
    while (at !== column + by && at + step >= 0 && at + step < columns && cells[row + at + step] !== BARE)
      at += step;
    return at;
  }

  /** The longest carry that a piece can hold after `run`, in tenths, with a knot after it. */
  #longestCarry(run: number): number {
    const { runs, tenths, tied } = this.#question;
    const knot = tenths.knot[runs.yarn[run]!]!;
    if (tied && run < tied.choice.previous.length) return tied.roomAfter[run]! - knot;
    return tenths.room - 2 * knot;
  }

  #add(from: number, cost: number): void {
    if (this.#size === this.from.length) {
      this.from = widened(this.from, new Int32Array(2 * this.#size));
      this.cost = widened(this.cost, new Float64Array(2 * this.#size));
    }
    this.from[this.#size] = from;
    this.cost[this.#size] = cost;
    this.#size++;
  }
}

/** For each cord, the run that ends there, and the one that begins there, counted from 1; 0 where none does. */
interface RowOfRuns {
  readonly endAt: Int32Array;
  readonly startAt: Int32Array;
}

/** How far a link may go, and its length and cost in tenths over so many rows and cords: `rows * stride + cords`. */
interface Reach {
  /** For each number of rows, the most cords. */
  readonly width: readonly number[];
  readonly stride: number;
  readonly carries: Float64Array;
  readonly costs: Float64Array;
}

function reachOf({ tenths, settings, chart }: PlanQuestion): Reach {
  const costOf = (cords: number, rows: number) => tenths.carry(cords, rows) + tenths.rowPrice * rows;
  const width: number[] = [];
  for (let rows = 0; rows <= Math.min(settings.carryMaxRows, chart.rows - 1); rows++) {
    if (costOf(0, rows) >= tenths.attach) break;
    let cords = 0;
    const most = Math.min(settings.carryMaxCords, chart.columns - 1);
    while (cords < most && costOf(cords + 1, rows) < tenths.attach) cords++;
    width.push(cords);
  }
  const stride = (width[0] ?? 0) + 1;
  const carries = new Float64Array(width.length * stride);
  const costs = new Float64Array(width.length * stride);
  width.forEach((most, rows) => {
    for (let cords = 0; cords <= most; cords++) {
      carries[rows * stride + cords] = tenths.carry(cords, rows);
      costs[rows * stride + cords] = costOf(cords, rows);
    }
  });
  return { width, stride, carries, costs };
}

function widened<T extends Int32Array | Float64Array>(old: T, wider: T): T {
  wider.set(old);
  return wider;
}
