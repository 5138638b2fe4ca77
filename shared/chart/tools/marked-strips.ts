import type { ChartSize } from './cell.ts';
import type { Strips } from './strips.ts';

/**
 * The cells of the chart that hold `mark`, as strips of one code. `marks` holds a byte for each cell, by row. Strips are
 * counted first and then put in place, since a chart of single cells has more of them than a growing list takes
 * quickly.
 */
export function markedStrips(
  marks: Uint8Array,
  mark: number,
  { columns, rows }: ChartSize,
  code: number,
): Strips {
  let count = 0;
  for (let place = 0; place < marks.length; place++) {
    if (marks[place] === mark && (place % columns === 0 || marks[place - 1] !== mark)) count++;
  }
  const strips = new Int32Array(count * 4);
  let at = 0;
  for (let row = 0; row < rows; row++) {
    const rowStart = row * columns;
    for (let column = 0; column < columns; column++) {
      if (marks[rowStart + column] !== mark) continue;
      const from = column;
      while (column < columns && marks[rowStart + column] === mark) column++;
      strips[at] = row;
      strips[at + 1] = from;
      strips[at + 2] = column - from;
      strips[at + 3] = code;
      at += 4;
    }
  }
  return strips;
}
