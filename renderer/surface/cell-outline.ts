/**
 * The outline of a set of cells, as a path on the screen: only the edges between a cell of the set and one outside of
 * it, and in each line as few pieces as possible.
 */
import type { CellBlock } from './chart-bitmap.ts';
import { type CellSize, columnEdge, rowEdge, type View } from './view.ts';

/** A byte a cell, by row; 1 where the cell belongs to the set. */
export interface CellSet {
  readonly columns: number;
  readonly rows: number;
  readonly cells: Uint8Array;
}

/** Adds the outline to the pen's path, of those cells that lie in a block. */
export function traceOutline(
  pen: Pick<CanvasRenderingContext2D, 'moveTo' | 'lineTo'>,
  set: CellSet,
  block: CellBlock,
  view: View,
  size: CellSize,
): void {
  const has = (row: number, column: number) =>
    column >= 0 && row >= 0 && column < set.columns && row < set.rows
      ? set.cells[row * set.columns + column] === 1
      : false;
  const { left, top, right, bottom } = block;
  for (let row = top; row <= bottom + 1; row++) {
    const y = rowEdge(view, size, row);
    for (const [from, to] of stretches(left, right, (column) => has(row - 1, column) !== has(row, column))) {
      pen.moveTo(columnEdge(view, size, from), y);
      pen.lineTo(columnEdge(view, size, to), y);
    }
  }
  for (let column = left; column <= right + 1; column++) {
    const x = columnEdge(view, size, column);
    for (const [from, to] of stretches(top, bottom, (row) => has(row, column - 1) !== has(row, column))) {
      pen.moveTo(x, rowEdge(view, size, from));
      pen.lineTo(x, rowEdge(view, size, to));
    }
  }
}

/** From `first` to `last` each stretch for which `isEdge` holds: where it begins and, just beyond it, where it ends. */
function* stretches(
  first: number,
  last: number,
  isEdge: (at: number) => boolean,
): Generator<[number, number]> {
  for (let at = first; at <= last; at++) {
    if (!isEdge(at)) continue;
    const from = at;
    while (at < last && isEdge(at + 1)) at++;
    yield [from, at + 1];
  }
}
