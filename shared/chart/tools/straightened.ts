import type { Cell } from './cell.ts';

/**
 * Where a line from `from` towards `to` ends when it is held straight: level, upright, or along a diagonal of the
 * cells, one down for each one across. The nearest of these is chosen by its true angle, since cells are seldom square;
 * along a diagonal the end is the cell nearest to `to`.
 */
export function straightened(from: Cell, to: Cell, pitchMm: number, rowHeightMm: number): Cell {
  const across = to.column - from.column;
  const down = to.row - from.row;
  const angle = Math.atan2(Math.abs(down) * rowHeightMm, Math.abs(across) * pitchMm);
  const diagonal = Math.atan2(rowHeightMm, pitchMm);
  if (angle < diagonal / 2) return { row: from.row, column: to.column };
  if (angle > (diagonal + Math.PI / 2) / 2) return { row: to.row, column: from.column };
  const along = Math.abs(across) * pitchMm ** 2 + Math.abs(down) * rowHeightMm ** 2;
  const steps = Math.round(along / (pitchMm ** 2 + rowHeightMm ** 2));
  return { row: from.row + Math.sign(down) * steps, column: from.column + Math.sign(across) * steps };
}
