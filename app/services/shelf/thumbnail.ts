/** A small picture of a design: its flat chart, thinned where it is larger. */
import type { Thumbnail } from '../../../shared/bridge.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import { codeOf } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { fringeMm } from '../../../shared/gauge/fringe.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';

/** Cells a side at most. */
export const THUMBNAIL_CELLS = 200;

/** Cords at which the length of the fringe is told, at most. */
export const THUMBNAIL_CORDS = 40;

export function thumbnailOf(design: Design): Thumbnail {
  const chart = flatten(design);
  const columns = Math.min(chart.columns, THUMBNAIL_CELLS);
  const rows = Math.min(chart.rows, THUMBNAIL_CELLS);
  const cells = new Uint8Array(columns * rows);
  // The cell in the middle of what a thinned cell stands for.
  const middle = (i: number, count: number, of: number) => Math.floor(((i + 0.5) * of) / count);
  for (let r = 0; r < rows; r++) {
    const from = middle(r, rows, chart.rows) * chart.columns;
    for (let c = 0; c < columns; c++) {
      cells[r * columns + c] = chart.cells[from + middle(c, columns, chart.columns)]!;
    }
  }
  const { pitchMm, rowHeightMm } = gaugeOf(design);
  return {
    columns,
    rows,
    cells,
    colors: Object.fromEntries(design.yarns.map((yarn) => [codeOf(yarn.id), yarn.color])),
    fringe: fringeMm(Math.min(chart.columns, THUMBNAIL_CORDS), design.fringe).map(
      (lengthMm) => lengthMm / (chart.rows * rowHeightMm),
    ),
    aspect: (chart.columns * pitchMm) / (chart.rows * rowHeightMm),
  };
}
