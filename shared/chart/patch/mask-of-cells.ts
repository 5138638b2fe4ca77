/** Masks chosen by a rectangle or by what the chart shows. */
import type { Chart } from '../chart.ts';
import { boxBetween } from '../tools/box.ts';
import type { Cell, ChartSize } from '../tools/cell.ts';
import { touchingCells } from '../tools/touching-cells.ts';
import { type Mask, maskOf } from './mask.ts';

/** The rectangle between two corners, both inside it, as far as the chart goes. */
export function maskOfRectangle(a: Cell, b: Cell, size: ChartSize): Mask {
  const { top, left, bottom, right } = boxBetween(a, b);
  const chosen = new Uint8Array(size.columns * size.rows);
  const from = Math.max(0, left);
  const to = Math.min(size.columns, right + 1);
  for (let row = Math.max(0, top); row <= Math.min(size.rows - 1, bottom) && from < to; row++) {
    chosen.fill(1, row * size.columns + from, row * size.columns + to);
  }
  return maskOf(chosen, size);
}

/** Every cell of the chart that shows this yarn or, for BARE, the cord. */
export function maskOfYarn(chart: Chart, code: number): Mask {
  return maskOf(
    chart.cells.map((seen) => (seen === code ? 1 : 0)),
    chart,
  );
}

/** The cells that show what the one at `start` shows and touch it by their sides. */
export function maskOfTouching(chart: Chart, start: Cell): Mask {
  return maskOf(touchingCells(chart.cells, chart, start), chart);
}

/** The whole chart. */
export function maskAll(size: ChartSize): Mask {
  return maskOf(new Uint8Array(size.columns * size.rows).fill(1), size);
}
