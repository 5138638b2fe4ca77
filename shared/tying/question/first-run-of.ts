import type { Runs } from '../runs.ts';

/** The first run that is tied in this row, from 0, or below it; as many as there are runs where none is. */
export function firstRunOf({ row: rows, count }: Pick<Runs, 'row' | 'count'>, row: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]! < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
