/**
 * What the maker's pins demand of a chart's runs: which strands must go on from one run to another, which must end, and
 * where no carry may pass. A carry passes what `passedBehind` tells in the steps, the knots of the row that it arrives
 * in from the cord where it comes down; and at that cord the rows in between, where it hangs. A turn passes nothing.
 */
import type { Pin } from '../../design/schema.ts';
import type { Held } from '../pieces/open-pieces.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';

export class PinnedRuns {
  /** The pins that are obeyed, in the order of the design's list. */
  readonly obeyed: Pin[] = [];
  /** For each run, the one that its strand must tie right after it, and the one right before it; -1 where none. */
  readonly after: Int32Array;
  readonly before: Int32Array;
  /** 1 for a run whose strand must end. */
  readonly #ends: Uint8Array;
  readonly #question: Pick<PlanQuestion, 'chart' | 'runs'>;
  /** 1 for a cell that no carry may pass; and for rows and columns that have one. */
  readonly #closed: Uint8Array;
  readonly #closedRows: Uint8Array;
  readonly #closedColumns: Uint8Array;

  constructor({ chart, runs }: Pick<PlanQuestion, 'chart' | 'runs'>) {
    this.#question = { chart, runs };
    this.after = new Int32Array(runs.count).fill(-1);
    this.before = new Int32Array(runs.count).fill(-1);
    this.#ends = new Uint8Array(runs.count);
    this.#closed = new Uint8Array(chart.cells.length);
    this.#closedRows = new Uint8Array(chart.rows);
    this.#closedColumns = new Uint8Array(chart.columns);
  }

  end(run: number): void {
    this.#ends[run] = 1;
  }

  mustEnd(run: number): boolean {
    return this.#ends[run] === 1;
  }

  /** Row and column from 0. */
  close(row: number, column: number): void {
    this.#closed[row * this.#question.chart.columns + column] = 1;
    this.#closedRows[row] = 1;
    this.#closedColumns[column] = 1;
  }

  open(row: number, column: number): void {
    this.#closed[row * this.#question.chart.columns + column] = 0;
  }

  carry(from: number, to: number): void {
    this.after[from] = to;
    this.before[to] = from;
  }

  undoCarry(from: number, to: number): void {
    this.after[from] = -1;
    this.before[to] = -1;
  }

  /** Whether a strand may go on from one run to the other, where no pin demands it. */
  mayLink(from: number, to: number): boolean {
    return (
      this.after[from] === -1 &&
      this.before[to] === -1 &&
      this.#ends[from] === 0 &&
      !this.passesClosed(from, to)
    );
  }

  passesClosed(from: number, to: number): boolean {
    const { runs, chart } = this.#question;
    const top = runs.row[from]!;
    const bottom = runs.row[to]!;
    const column = runs.last[from]!;
    if (this.#closedColumns[column] === 1) {
      for (let row = top + 1; row < bottom; row++)
        if (this.#closed[row * chart.columns + column] === 1) return true;
    }
    if (this.#closedRows[bottom] === 0) return false;
    const goal = runs.first[to]!;
    const step = goal < column ? -1 : 1;
    // In its own row it begins beside its last knot.
    for (let at = top === bottom ? column + step : column; (goal - at) * step > 0; at += step)
      if (this.#closed[bottom * chart.columns + at] === 1) return true;
    return false;
  }

  /** For strands that are tied from their first run on, and for those that are read from their end. */
  held(run: number): Held {
    return heldBy[this.before[run] === -1 ? 0 : 1]![this.after[run] === -1 ? 0 : 1]!;
  }

  heldBackwards(run: number): Held {
    return heldBy[this.after[run] === -1 ? 0 : 1]![this.before[run] === -1 ? 0 : 1]!;
  }
}

/** By whether the run is reached over a pinned link, and whether one leads on. */
const heldBy: readonly (readonly Held[])[] = [false, true].map((here) =>
  [false, true].map((onward) => ({ here, onward })),
);
