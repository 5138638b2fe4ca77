import type { Cell } from './cell.ts';

/**
 * The cells of a straight line between two cells, both included, each touching the next by side or corner
 * (Bresenham). A freehand stroke is such lines between the pointer's places, so a fast one has no gaps.
 */
export function lineCells(from: Cell, to: Cell): Cell[] {
  const cells: Cell[] = [];
  const across = Math.abs(to.column - from.column);
  const down = Math.abs(to.row - from.row);
  const stepColumn = Math.sign(to.column - from.column);
  const stepRow = Math.sign(to.row - from.row);
  let { row, column } = from;
  let error = across - down;
  for (;;) {
    cells.push({ row, column });
    if (row === to.row && column === to.column) return cells;
    const twice = 2 * error;
    if (twice > -down) {
      error -= down;
      column += stepColumn;
    }
    if (twice < across) {
      error += across;
      row += stepRow;
    }
  }
}
