/** The cords that come of some cut cords: '1–4, 7'. */
import type { CordGroup } from '../../materials/materials.ts';

export function cordRanges({ columns }: Pick<CordGroup, 'columns'>): string {
  return columns.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`)).join(', ');
}
