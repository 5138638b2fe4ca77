import { EMPTY } from '../../design/codes.ts';
import type { Box } from '../tools/box.ts';
import type { Cell } from '../tools/cell.ts';
import { noStrips, type Strips } from '../tools/strips.ts';
import type { Block } from './block.ts';

/** How a block is repeated. */
export interface Tiling {
  /** The upper left cell of one of the tiles, anywhere; the others follow from it in all directions. */
  readonly at: Cell;
  /** Cells left free between two tiles side by side, and between one and the next below. From 0. */
  readonly columnGap: number;
  readonly rowGap: number;
  /** `half`: every other column of tiles hangs half a repeat lower, as in cloth (half drop); an odd repeat is halved
   * downwards. */
  readonly drop: 'none' | 'half';
}

/**
 * The block repeated over an area, which cuts the tiles at its edges. Where the block is empty, and in the gaps,
 * nothing is drawn.
 */
export function tiledStrips(block: Block, over: Box, { at, columnGap, rowGap, drop }: Tiling): Strips {
  if (block.columns === 0 || block.rows === 0) return noStrips;
  const across = block.columns + columnGap;
  const down = block.rows + rowGap;
  const dropRows = drop === 'half' ? Math.floor(down / 2) : 0;
  const firstTile = Math.floor((over.left - at.column) / across);
  const strips: number[] = [];
  for (let row = over.top; row <= over.bottom; row++) {
    for (let tile = firstTile; at.column + tile * across <= over.right; tile++) {
      const isDropped = remainder(tile, 2) === 1;
      const blockRow = remainder(row - at.row - (isDropped ? dropRows : 0), down);
      if (blockRow >= block.rows) continue;
      const left = at.column + tile * across;
      const first = Math.max(0, over.left - left);
      const last = Math.min(block.columns - 1, over.right - left);
      addRow(strips, block, blockRow, first, last, row, left);
    }
  }
  return new Int32Array(strips);
}

/** The cells `first` to `last` of one row of the block, drawn in a row of the chart with the block's edge at `left`. */
function addRow(
  strips: number[],
  { columns, cells }: Block,
  blockRow: number,
  first: number,
  last: number,
  row: number,
  left: number,
): void {
  const start = blockRow * columns;
  for (let from = first; from <= last; ) {
    const code = cells[start + from]!;
    let to = from + 1;
    while (to <= last && cells[start + to] === code) to++;
    if (code !== EMPTY) strips.push(row, left + from, to - from, code);
    from = to;
  }
}

/** What is left of a division, from 0 also for numbers below 0. */
function remainder(number: number, by: number): number {
  return ((number % by) + by) % by;
}
