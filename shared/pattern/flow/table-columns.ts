/** The widths of a table's columns from what stands in them: figures are as wide as they need, names take the rest. */
import { textWidthMm, widestPieceMm } from '../faces/measure-text.ts';
import type { Flow } from './flow.ts';
import { CELL_GAP_MM, type TableCell, type TableColumn } from './table.ts';

/** Of a column that holds no figures: its width in mm; 'rest', all that is left; or the same for names, on two lines at most. */
type FirstColumn = number | 'rest' | 'names';

/** `first` are the first columns; all others hold figures. */
export function columnsFor(
  { sizes }: Pick<Flow, 'sizes'>,
  heads: readonly string[],
  rows: readonly (readonly TableCell[])[],
  first: readonly FirstColumn[],
): TableColumn[] {
  return heads.map((head, i) => {
    const column = first[i];
    if (column === 'rest') return { head };
    if (column === 'names') return { head, mostLines: 2 };
    if (column !== undefined) return { head, width: column };
    const shown = rows.map((row) => row[i]).filter((cell) => typeof cell === 'string');
    const figures = shown.map((figure) => textWidthMm(figure, 'sans', sizes.body));
    const width = Math.max(widestPieceMm(head, 'sans', sizes.small), ...figures, LEAST_MM);
    return { head, width: width + CELL_GAP_MM + 1, align: 'right' };
  });
}

const LEAST_MM = 9;
