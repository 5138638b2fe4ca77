/** Cells taken out of the chart under a mask, as a block that begins at the mask's upper left bound. */
import { EMPTY } from '../../design/codes.ts';
import type { Chart } from '../chart.ts';
import type { Block } from './block.ts';
import type { Mask } from './mask.ts';

/** A layer's cells under the mask; `rows` are the layer's. A block of no cells where none is chosen. */
export function liftBlock(rows: readonly Uint8Array[], mask: Mask): Block {
  return lifted(mask, (row, column) => rows[row]![column]!);
}

/** What the chart shows under the mask, through all layers: also where the cord shows, which becomes bare. */
export function liftSeen(chart: Chart, mask: Mask): Block {
  return lifted(mask, (row, column) => chart.cells[row * chart.columns + column]!);
}

function lifted(mask: Mask, codeAt: (row: number, column: number) => number): Block {
  if (!mask.bounds) return { columns: 0, rows: 0, cells: new Uint8Array(0) };
  const { top, left, bottom, right } = mask.bounds;
  const columns = right - left + 1;
  const rows = bottom - top + 1;
  const cells = new Uint8Array(columns * rows).fill(EMPTY);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (mask.chosen[(top + row) * mask.columns + left + column] !== 1) continue;
      cells[row * columns + column] = codeAt(top + row, left + column);
    }
  }
  return { columns, rows, cells };
}
