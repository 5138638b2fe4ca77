import { limits } from '../../design/limits.ts';
import type { Cell } from './cell.ts';
import { ellipseCounts } from './ellipse-counts.ts';

/** Flat ones draw thick one way and a single cell thin the other. */
export type NibShape = 'round' | 'square' | 'flat-across' | 'flat-down';

/**
 * The cells that a nib draws at once, as offsets from the pointer's cell, row by row and left to right. A nib of an
 * even width has no middle cell: the pointer's is then the upper left one of the middle four. `width` is in cells, from
 * 1 to `limits.nibCells`; throws beyond.
 */
export function nibCells(width: number, shape: NibShape): readonly Cell[] {
  if (!Number.isInteger(width) || width < 1 || width > limits.nibCells) {
    throw new RangeError(`a nib of ${width} cells`);
  }
  const counts = rowsOf[shape](width);
  return counts.flatMap((count, r) => {
    const row = r - middle(counts.length);
    return Array.from({ length: count }, (_, c) => ({ row, column: c - middle(count) }));
  });
}

/** How many cells each row of the nib has; the rows lie centred over one another. */
const rowsOf: Record<NibShape, (width: number) => readonly number[]> = {
  round: (width) => [...ellipseCounts(width, width)],
  square: (width) => new Array<number>(width).fill(width),
  'flat-across': (width) => [width],
  'flat-down': (width) => new Array<number>(width).fill(1),
};

function middle(count: number): number {
  return Math.floor((count - 1) / 2);
}
