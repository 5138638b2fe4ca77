import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { Pin } from '../../../shared/design/schema.ts';

/** What a pin decides, with its place. */
export function pinWords({ kind, row, cord, toRow, toCord }: Pin): string {
  switch (kind) {
    case 'cut':
      return `Cut after row ${row}, cord ${cord}`;
    case 'no-carry':
      return `Never carry across row ${row}, cord ${cord}`;
    case 'carry':
      return `Carry from row ${row}, cord ${cord} to row ${toRow}, cord ${toCord}`;
  }
}

/** Where a strand is cut that is told to be cut at a cell: not in the middle of a run, but where that ends. */
export function cutWords({ row, cord }: Pin, { column }: Cell): string {
  return cord === column + 1
    ? `A cut here is after cord ${cord} of row ${row}.`
    : `A cut here is after cord ${cord} of row ${row}, where the run ends: strands are cut between runs.`;
}
