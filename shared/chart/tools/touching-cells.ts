import { type Cell, type ChartSize, isInside } from './cell.ts';

/**
 * Marks, a byte a cell of the chart, what is like the cell at `start` and touches it, side by side or through others
 * like it: 1 there, 0 elsewhere. `values` holds a byte for each cell, by row. Nothing is marked where `start` lies
 * outside.
 *
 * Works along rows: a stretch of a row is marked as one, and looks for stretches above and below it, so the list of
 * what is still to do stays short and no stack can run out.
 */
export function touchingCells(values: Uint8Array, size: ChartSize, start: Cell): Uint8Array {
  const { columns, rows } = size;
  const marked = new Uint8Array(columns * rows);
  if (!isInside(start, size)) return marked;
  const like = values[start.row * columns + start.column]!;
  const todo: number[] = [start.row * columns + start.column];
  while (todo.length > 0) {
    const place = todo.pop()!;
    if (marked[place] === 1) continue;
    const rowStart = place - (place % columns);
    const rowEnd = rowStart + columns;
    let from = place;
    let to = place + 1;
    while (from > rowStart && values[from - 1] === like) from--;
    while (to < rowEnd && values[to] === like) to++;
    marked.fill(1, from, to);
    if (rowStart > 0) findStretches(from - columns, to - columns);
    if (rowEnd < marked.length) findStretches(from + columns, to + columns);
  }
  return marked;

  /** Puts one cell of each open stretch between two places of a row on the list. */
  function findStretches(from: number, to: number): void {
    let wasOpen = false;
    for (let place = from; place < to; place++) {
      const isOpen = values[place] === like && marked[place] === 0;
      if (isOpen && !wasOpen) todo.push(place);
      wasOpen = isOpen;
    }
  }
}
