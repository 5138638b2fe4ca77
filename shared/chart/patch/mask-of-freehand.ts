import type { Cell, ChartSize } from '../tools/cell.ts';
import { isInside } from '../tools/cell.ts';
import { lineCells } from '../tools/line-cells.ts';
import { type Mask, maskOf } from './mask.ts';

/**
 * What an outline drawn by hand encloses, and the outline itself. `way` is the pointer's cells one after another; they
 * may lie outside the chart, and need not touch. The last is joined to the first. Where the outline crosses itself,
 * a cell is enclosed when a line from it outwards crosses the outline an odd number of times (the even-odd rule).
 */
export function maskOfFreehand(way: readonly Cell[], size: ChartSize): Mask {
  const { columns, rows } = size;
  const chosen = new Uint8Array(columns * rows);
  const crossings = Array.from({ length: rows }, (): number[] => []);
  for (const [i, from] of way.entries()) {
    const to = way[(i + 1) % way.length]!;
    for (const cell of lineCells(from, to)) {
      if (isInside(cell, size)) chosen[cell.row * columns + cell.column] = 1;
    }
    addCrossings(crossings, from, to);
  }
  for (const [row, columnsCrossed] of crossings.entries()) {
    columnsCrossed.sort((a, b) => a - b);
    for (let i = 0; i + 1 < columnsCrossed.length; i += 2) {
      const first = Math.max(0, Math.ceil(columnsCrossed[i]!));
      const last = Math.min(columns - 1, Math.floor(columnsCrossed[i + 1]!));
      if (first <= last) chosen.fill(1, row * columns + first, row * columns + last + 1);
    }
  }
  return maskOf(chosen, size);
}

/**
 * Where the straight line between two cells' middles crosses the rows, in columns. It crosses the row of its upper end
 * and not that of its lower one, so that a corner of the outline counts once where the outline goes on through the row
 * and twice or not at all where it turns back.
 */
function addCrossings(crossings: readonly number[][], a: Cell, b: Cell): void {
  const [upper, lower] = a.row < b.row ? [a, b] : [b, a];
  const last = Math.min(lower.row, crossings.length);
  for (let row = Math.max(0, upper.row); row < last; row++) {
    const share = (row - upper.row) / (lower.row - upper.row);
    crossings[row]!.push(upper.column + share * (lower.column - upper.column));
  }
}
