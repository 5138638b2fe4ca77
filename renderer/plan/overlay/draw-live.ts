/** Strands that hang below each row: rows tinted, and a bar with its figure beside them. */
import { drawRowBars } from './draw-row-bars.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';
import { addCells } from './veils.ts';

/** How much of the accent lies over the rows below which the most strands hang; over others in proportion. */
export const heatiest = 0.62;

export function drawLive(pen: Pen, overlay: PlacedOverlay): void {
  const { planned, inSight, inks } = overlay;
  const most = Math.max(1, planned.figures.liveMax);
  pen.fillStyle = inks.accent;
  for (let row = inSight.top; row <= inSight.bottom; row++) {
    const { live } = planned.rows[row]!;
    if (live === 0) continue;
    pen.globalAlpha = heatiest * (live / most);
    pen.beginPath();
    addCells(pen, overlay, { ...inSight, top: row, bottom: row });
    pen.fill();
  }
  pen.globalAlpha = 1;
  drawRowBars(pen, overlay, 'live');
}
