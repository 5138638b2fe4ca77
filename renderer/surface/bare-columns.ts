import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { CellBlock } from './chart-bitmap.ts';

/** For each column (from 0) 1 where any of its cells is bare, so that its cord must be drawn behind the chart. */
export function bareColumns({ columns, cells }: Chart): Uint8Array {
  const bare = new Uint8Array(columns);
  for (let at = cells.indexOf(BARE); at >= 0; at = cells.indexOf(BARE, at + 1)) bare[at % columns] = 1;
  return bare;
}

/**
 * Marks the columns that have a bare cell in a block; true where one was not marked before. None is unmarked: a cord
 * drawn behind knots is not seen.
 */
export function markBare(bare: Uint8Array, { columns, cells }: Chart, block: CellBlock): boolean {
  let isNew = false;
  for (let row = block.top; row <= block.bottom; row++) {
    for (let column = block.left; column <= block.right; column++) {
      if (cells[row * columns + column] !== BARE || bare[column] === 1) continue;
      bare[column] = 1;
      isNew = true;
    }
  }
  return isNew;
}
