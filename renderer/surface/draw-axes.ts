import type { Axes, AxisLine } from '../../shared/chart/symmetry/axes.ts';
import { strokeTwoTones } from './two-tones.ts';
import type { CellSize, View } from './view.ts';

/** There are many edges of repeats, so each is drawn more quietly than a mirror. */
const gridOpacity = 0.6;

/**
 * A symmetry's mirrors as thin broken lines, the edges of its repeats as finer ones, and a ring where it turns. Light
 * and dark take turns along a line instead of lying side by side: it shows on every yarn, and hides little of it.
 */
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
  pen.globalAlpha = gridOpacity;
  strokeTwoTones(pen, { ratio, width: 1, halo: 0, dash: [3, 3] });
  pen.globalAlpha = 1;
  trace(axes.mirrors);
  strokeTwoTones(pen, { ratio, width: 1, halo: 0, dash: [8, 8] });
  for (const centre of axes.centres) {
    pen.beginPath();
    pen.arc(x(centre.x), y(centre.y), 5 * ratio, 0, 2 * Math.PI);
    strokeTwoTones(pen, { ratio });
  }
}
