import type { Axes, AxisLine } from '../../shared/chart/symmetry/axes.ts';
import { strokeTwoTones } from './two-tones.ts';
import type { CellSize, View } from './view.ts';

/** A symmetry's mirrors as broken lines, the edges of its repeats as fine ones, and a ring where it turns. */
export function drawAxes(
  pen: CanvasRenderingContext2D,
  axes: Axes,
  view: View,
  size: CellSize,
  ratio: number,
): void {
  // Between whole pixels, where lines of an odd width would be blurred.
  const x = (column: number) => Math.round(view.x + column * size.pitchMm * view.scale) + 0.5;
  const y = (row: number) => Math.round(view.y + row * size.rowHeightMm * view.scale) + 0.5;
  const trace = (lines: readonly AxisLine[]) => {
    pen.beginPath();
    for (const line of lines) {
      pen.moveTo(x(line.x1), y(line.y1));
      pen.lineTo(x(line.x2), y(line.y2));
    }
  };
  trace(axes.grid);
  strokeTwoTones(pen, { ratio, width: 1, dash: [2, 4] });
  trace(axes.mirrors);
  strokeTwoTones(pen, { ratio, dash: [10, 5] });
  for (const centre of axes.centres) {
    pen.beginPath();
    pen.arc(x(centre.x), y(centre.y), 5 * ratio, 0, 2 * Math.PI);
    strokeTwoTones(pen, { ratio });
  }
}
