import type { Strips } from '../tools/strips.ts';
import type { CellText } from './cell-text.ts';

/** A text as strips of one code, its top left corner at a row and a column of the chart (from 0). */
export function textStrips(
  { columns, rows, cells }: CellText,
  row: number,
  column: number,
  code: number,
): Strips {
  const strips: number[] = [];
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const from = c;
      while (c < columns && cells[r * columns + c] === 1) c++;
      if (c > from) strips.push(row + r, column + from, c - from, code);
    }
  }
  return Int32Array.from(strips);
}
