import type { Cell } from '../tools/cell.ts';

/**
 * One element of a symmetry, as what it does to a cell (rows and columns from 0), in whole numbers:
 * `row' = rr * row + rc * column + r0` and `column' = cr * row + cc * column + c0`.
 * Either rr and cc are 1 or -1 and the others 0, or the other way round, where rows become columns.
 */
export interface CellMap {
  readonly rr: number;
  readonly rc: number;
  readonly r0: number;
  readonly cr: number;
  readonly cc: number;
  readonly c0: number;
}

export function imageOf({ row, column }: Cell, { rr, rc, r0, cr, cc, c0 }: CellMap): Cell {
  return { row: rr * row + rc * column + r0, column: cr * row + cc * column + c0 };
}
