import type { ChartSize } from './cell.ts';
import type { Strips } from './strips.ts';

/** The cells of the chart that hold `mark`, as strips of one code. `marks` holds a byte for each cell, by row. */
export function markedStrips(
  marks: Uint8Array,
  mark: number,
  { columns, rows }: ChartSize,
  code: number,
): Strips {
  const strips: number[] = [];
  for (let row = 0; row < rows; row++) {
    const rowStart = row * columns;
    const rowEnd = rowStart + columns;
    for (let from = rowStart; from < rowEnd; from++) {
      if (marks[from] !== mark) continue;
      let to = from + 1;
      while (to < rowEnd && marks[to] === mark) to++;
      strips.push(row, from - rowStart, to - from, code);
      from = to;
    }
  }
  return Int32Array.from(strips);
}
