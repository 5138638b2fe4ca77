import type { Cell } from './cell.ts';
import { lineCells } from './line-cells.ts';
import type { Strips } from './strips.ts';
import { strokeStrips } from './stroke-strips.ts';

/** What a nib draws along the straight line between two cells. */
export function lineStrips(from: Cell, to: Cell, code: number, nib: readonly Cell[]): Strips {
  return strokeStrips(lineCells(from, to), code, nib);
}
