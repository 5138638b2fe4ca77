import type { Chart } from '../../chart/chart.ts';

/**
 * The rows between which two charts of one size differ, counted from 0: all above `first` and all from `end` on are as
 * they were. Both are 0 where no cell has changed.
 */
export function changedRows(
  { cells: old }: Pick<Chart, 'cells'>,
  { cells, columns }: Pick<Chart, 'cells' | 'columns'>,
): { readonly first: number; readonly end: number } {
  let from = 0;
  while (from < cells.length && cells[from] === old[from]) from++;
  if (from === cells.length) return { first: 0, end: 0 };
  let to = cells.length - 1;
  while (cells[to] === old[to]) to--;
  return { first: Math.floor(from / columns), end: Math.floor(to / columns) + 1 };
}
