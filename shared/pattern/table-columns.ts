/** The widths of a table's columns from what stands in them: figures are as wide as they need, names take the rest. */
import { figureWidth, type TableCell, type TableColumn } from './flow.ts';

/** `first` gives the widths of the first columns, in mm; null for the one that takes the rest. All others hold figures. */
export function columnsFor(
  heads: readonly string[],
  rows: readonly (readonly TableCell[])[],
  first: readonly (number | null)[],
): TableColumn[] {
  return heads.map((head, i) => {
    const width = first[i];
    if (width === null) return { head };
    if (width !== undefined) return { head, width };
    const shown = rows.map((row) => row[i]).filter((cell) => typeof cell === 'string');
    return { head, width: figureWidth(head, shown), align: 'right' };
  });
}
