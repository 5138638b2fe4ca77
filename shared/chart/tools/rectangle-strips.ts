import { boxBetween } from './box.ts';
import type { Cell } from './cell.ts';
import type { Outline } from './outline.ts';
import type { Strips } from './strips.ts';

/** The rectangle between two corners, both inside it. */
export function rectangleStrips(from: Cell, to: Cell, code: number, { filled, width }: Outline): Strips {
  const { top, left, bottom, right } = boxBetween(from, to);
  const columns = right - left + 1;
  const strips: number[] = [];
  for (let row = top; row <= bottom; row++) {
    const isOpen = row - top >= width && bottom - row >= width && columns > 2 * width;
    if (filled || !isOpen) strips.push(row, left, columns, code);
    else strips.push(row, left, width, code, row, right - width + 1, width, code);
  }
  return new Int32Array(strips);
}
