import type { Paint } from '../../design/edits.ts';
import type { Chart } from '../chart.ts';
import { type Cell, isInside } from './cell.ts';

/**
 * The edit that gives a code to every cell that shows what the cell at `start` shows and touches it, side by side or
 * through others like it. Goes by what is seen, whatever layer it comes from. Null where `start` shows it already or
 * lies outside.
 *
 * Works along rows: a stretch of a row is filled as one, and looks for stretches above and below it, so the list of
 * what is still to do stays short and no stack can run out.
 */
export function paintFill(layer: string, code: number, start: Cell, chart: Chart): Paint | null {
  const { columns, rows, cells } = chart;
  if (!isInside(start, chart)) return null;
  const seen = cells[start.row * columns + start.column]!;
  if (seen === code) return null;
  const filled = new Uint8Array(columns * rows);
  const isOpen = (row: number, column: number) =>
    cells[row * columns + column] === seen && filled[row * columns + column] === 0;
  const todo: number[] = [start.row, start.column];
  while (todo.length > 0) {
    const column = todo.pop()!;
    const row = todo.pop()!;
    if (!isOpen(row, column)) continue;
    let left = column;
    let right = column;
    while (left > 0 && isOpen(row, left - 1)) left--;
    while (right < columns - 1 && isOpen(row, right + 1)) right++;
    filled.fill(1, row * columns + left, row * columns + right + 1);
    for (const next of [row - 1, row + 1]) {
      if (next < 0 || next >= rows) continue;
      for (let c = left; c <= right; c++) {
        if (isOpen(next, c) && (c === left || !isOpen(next, c - 1))) todo.push(next, c);
      }
    }
  }
  return { kind: 'paint', layer, runs: runsOf(filled, columns, rows, code) };
}

function runsOf(filled: Uint8Array, columns: number, rows: number, code: number): Uint16Array {
  const runs: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let c = 0; c < columns; c++) {
      if (filled[row * columns + c] === 0) continue;
      const from = c;
      while (c + 1 < columns && filled[row * columns + c + 1] === 1) c++;
      runs.push(row, from, c + 1 - from, code);
    }
  }
  return Uint16Array.from(runs);
}
