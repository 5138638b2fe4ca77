/** A patch as strips: its cells where it is put down, and the emptiness where it was taken away. */
import { EMPTY } from '../../design/codes.ts';
import { markedStrips } from '../tools/marked-strips.ts';
import type { Strips } from '../tools/strips.ts';
import type { Block } from './block.ts';
import type { Mask } from './mask.ts';

/** The block's cells with its upper left corner at a cell of the chart; where it is empty, nothing is drawn. */
export function blockStrips({ columns, rows, cells }: Block, row: number, column: number): Strips {
  const strips: number[] = [];
  for (let r = 0; r < rows; r++) {
    const end = (r + 1) * columns;
    for (let from = r * columns; from < end; ) {
      const code = cells[from]!;
      let to = from + 1;
      while (to < end && cells[to] === code) to++;
      if (code !== EMPTY) strips.push(row + r, column + from - r * columns, to - from, code);
      from = to;
    }
  }
  return new Int32Array(strips);
}

/** The chosen cells, emptied. */
export function erasureStrips(mask: Mask): Strips {
  return markedStrips(mask.chosen, 1, mask, EMPTY);
}
