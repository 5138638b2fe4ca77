/**
 * Lone knots: knots with no knot of their yarn beside them in the row nor above or below them. Each is a run of its
 * own, often a piece of its own, and reads as a speck. Corners do not count: a strand can't hold two knots together
 * that meet at a corner, so a thin slanted line is made of lone knots.
 */
import { BARE } from '../../design/codes.ts';
import type { Chart } from '../chart.ts';

/** 1 for each cell of the chart that is a lone knot, 0 for all others. */
export function loneKnots(chart: Chart): Uint8Array {
  const { cells, columns, rows } = chart;
  const mask = new Uint8Array(cells.length);
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, cell++) {
      mask[cell] = isLoneKnot(chart, row, column) ? 1 : 0;
    }
  }
  return mask;
}

/**
 * Whether the cell is a lone knot; row and column from 0, inside the chart. Beyond the edge everything is bare.
 *
 * Of two like codes the exclusive or is 0, and 0 - 1 alone has its top bit set. All such bits are looked at together,
 * since on a speckled chart branches that nobody can foresee take twice as long.
 */
export function isLoneKnot({ cells, columns, rows }: Chart, row: number, column: number): boolean {
  const cell = row * columns + column;
  const code = cells[cell]!;
  const left = column > 0 ? cells[cell - 1]! : BARE;
  const right = column < columns - 1 ? cells[cell + 1]! : BARE;
  const above = row > 0 ? cells[cell - columns]! : BARE;
  const below = row < rows - 1 ? cells[cell + columns]! : BARE;
  const bare = (code ^ BARE) - 1;
  const alike = ((left ^ code) - 1) | ((right ^ code) - 1) | ((above ^ code) - 1) | ((below ^ code) - 1);
  return (alike | bare) >= 0;
}
