import type { Cell } from './cell.ts';

/** A rectangle of cells, by its first and last row and column, all four inside. From 0. */
export interface Box {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** The rectangle between two corners, whichever they are. */
export function boxBetween(a: Cell, b: Cell): Box {
  return {
    top: Math.min(a.row, b.row),
    left: Math.min(a.column, b.column),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.column, b.column),
  };
}

/** The smallest rectangle with all of these cells in it; there must be one at least. */
export function boxAround(cells: readonly Cell[]): Box {
  const box = { top: Infinity, left: Infinity, bottom: -Infinity, right: -Infinity };
  for (const { row, column } of cells) {
    box.top = Math.min(box.top, row);
    box.left = Math.min(box.left, column);
    box.bottom = Math.max(box.bottom, row);
    box.right = Math.max(box.right, column);
  }
  return box;
}
