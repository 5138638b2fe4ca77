/** What touches what: which yarns have knots side by side in a row, or one above the other. Corners don't touch. */
import type { Chart } from '../chart/chart.ts';
import { BARE } from '../design/codes.ts';

/** Two yarns by their codes, a < b, and the number of places where a knot of one touches a knot of the other. */
export interface TouchingPair {
  readonly a: number;
  readonly b: number;
  readonly count: number;
}

/** Pairs of different yarns, those that touch in the most places first. Bare cells are no yarn. */
export function touchingPairs({ cells, columns, rows }: Chart): TouchingPair[] {
  const counts = new Uint32Array(256 * 256);
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, cell++) {
      const code = cells[cell]!;
      if (column + 1 < columns) counts[code * 256 + cells[cell + 1]!]! += 1;
      if (row + 1 < rows) counts[code * 256 + cells[cell + columns]!]! += 1;
    }
  }
  const pairs: TouchingPair[] = [];
  for (let a = 1; a < BARE; a++) {
    for (let b = a + 1; b < BARE; b++) {
      const count = counts[a * 256 + b]! + counts[b * 256 + a]!;
      if (count > 0) pairs.push({ a, b, count });
    }
  }
  return pairs.sort((one, other) => other.count - one.count || one.a - other.a || one.b - other.b);
}

/** 1 for each cell of the two yarns (codes) that touches a cell of the other, 0 for all others. */
export function placesOf({ cells, columns, rows }: Chart, a: number, b: number): Uint8Array {
  const mask = new Uint8Array(cells.length);
  const mark = (cell: number, next: number) => {
    const touch = (cells[cell] === a && cells[next] === b) || (cells[cell] === b && cells[next] === a);
    if (touch && a !== b) mask[cell] = mask[next] = 1;
  };
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, cell++) {
      if (column + 1 < columns) mark(cell, cell + 1);
      if (row + 1 < rows) mark(cell, cell + columns);
    }
  }
  return mask;
}
