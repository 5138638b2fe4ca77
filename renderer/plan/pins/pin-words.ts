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
