/** Rows of the open design in words, as a pattern prints them: 'Row 12, right to left: 5 Moss (16-12), 11 Bark (11-1)'. */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { writtenRow, writtenRowText } from '../../../shared/tying/rows/written-rows.ts';

/** Rows from 0, as many as there are from `first` on. Cells that no layer covers are bare. */
export function rowsInWords(chart: Chart, yarns: readonly Yarn[], first: number, count: number): string[] {
  const yarnsById = new Map(yarns.map((yarn) => [yarn.id, yarn]));
  const last = Math.min(chart.rows, first + count);
  return Array.from(
    { length: Math.max(0, last - first) },
    (_, i) => `${writtenRowText(writtenRow(chart, first + i, yarnsById))}.`,
  );
}
