import type { Cell } from './cell.ts';

/**
 * The corner that makes the box from `from` to `to` a true square, as near as whole cells allow: both corners' cells
 * count, the longer side in mm stays, and the other becomes as long. Towards `to`; down and right where `to` does not
 * say.
 */
export function squared(from: Cell, to: Cell, pitchMm: number, rowHeightMm: number): Cell {
  const columns = Math.abs(to.column - from.column) + 1;
  const rows = Math.abs(to.row - from.row) + 1;
  const sideMm = Math.max(columns * pitchMm, rows * rowHeightMm);
  return {
    row: from.row + (to.row < from.row ? -1 : 1) * (cellsIn(sideMm, rowHeightMm) - 1),
    column: from.column + (to.column < from.column ? -1 : 1) * (cellsIn(sideMm, pitchMm) - 1),
  };
}

function cellsIn(sideMm: number, cellMm: number): number {
  return Math.max(1, Math.round(sideMm / cellMm));
}
