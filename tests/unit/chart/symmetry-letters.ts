/** Strips as rows of letters, so that what a symmetry or a border draws can be seen in a test. */
import type { ChartSize } from '../../../shared/chart/tools/cell.ts';
import { paintStrips, type Strips, stripsOfCells } from '../../../shared/chart/tools/strips.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { apply } from '../../../shared/design/edits.ts';
import { designFromLetters, lettersOf } from '../../notation.ts';

/** A strip of one cell for every letter. */
export function stripsOfLetters(rows: readonly string[]): Strips {
  const strips: number[] = [];
  designFromLetters(rows).layers[0]!.rows.forEach((cells, row) => {
    cells.forEach((code, column) => {
      if (code !== EMPTY) strips.push(...stripsOfCells([{ row, column }], code));
    });
  });
  return Int32Array.from(strips);
}

/** What an empty layer looks like when the strips are drawn on it. */
export function lettersOfStrips(strips: Strips, { columns, rows }: ChartSize): string[] {
  const empty = designFromLetters(Array.from({ length: rows }, () => '.'.repeat(columns)));
  const edit = paintStrips('picture', strips, { columns, rows });
  return lettersOf(edit ? apply(empty, edit) : empty);
}
