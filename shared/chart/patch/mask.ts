import type { Box } from '../tools/box.ts';
import { type Cell, type ChartSize, isInside } from '../tools/cell.ts';

/** The cells of the chart that a patch is made of. It may be of any form, and in several parts. */
export interface Mask {
  readonly columns: number;
  readonly rows: number;
  /** A byte for each cell of the chart, by row: 1 where it is chosen, else 0. */
  readonly chosen: Uint8Array;
  /** The smallest rectangle with all chosen cells in it; null where none is chosen. */
  readonly bounds: Box | null;
}

/** The mask of these cells; `chosen` becomes its own and is not to be changed any more. */
export function maskOf(chosen: Uint8Array, { columns, rows }: ChartSize): Mask {
  return { columns, rows, chosen, bounds: boundsOf(chosen, columns) };
}

export function isChosen(mask: Mask, cell: Cell): boolean {
  return isInside(cell, mask) && mask.chosen[cell.row * mask.columns + cell.column] === 1;
}

function boundsOf(chosen: Uint8Array, columns: number): Box | null {
  const first = chosen.indexOf(1);
  if (first < 0) return null;
  const top = Math.floor(first / columns);
  const bottom = Math.floor(chosen.lastIndexOf(1) / columns);
  let left = columns;
  let right = -1;
  for (let row = top; row <= bottom; row++) {
    const cells = chosen.subarray(row * columns, (row + 1) * columns);
    const from = cells.indexOf(1);
    if (from < 0) continue;
    left = Math.min(left, from);
    right = Math.max(right, cells.lastIndexOf(1));
  }
  return { top, left, bottom, right };
}
