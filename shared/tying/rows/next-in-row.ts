/** What comes after a cell in its row, as the maker ties it: for the line under the chart. */
import { type Chart, goesRight } from '../../chart/chart.ts';
import type { Cell } from '../../chart/tools/cell.ts';

export interface Stretch {
  /** A yarn's code or BARE. */
  readonly code: number;
  readonly count: number;
}

/** The stretches that follow the one that `cell` lies in, in tying order. Empty where it is the row's last. */
export function nextInRow({ columns, cells, startCorner }: Chart, { row, column }: Cell): Stretch[] {
  const step = goesRight(startCorner, row) ? 1 : -1;
  const codeAt = (c: number) => cells[row * columns + c]!;
  const stretches: { code: number; count: number }[] = [{ code: codeAt(column), count: 0 }];
  for (let c = column; c >= 0 && c < columns; c += step) {
    const last = stretches.at(-1)!;
    if (codeAt(c) === last.code) last.count++;
    else stretches.push({ code: codeAt(c), count: 1 });
  }
  return stretches.slice(1);
}
