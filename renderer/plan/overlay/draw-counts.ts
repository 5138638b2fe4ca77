/** How many of something lie in each part of the chart: where cells are too small to show each of them. */
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { columnEdge, rowEdge } from '../../surface/view.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';

/** Width of a part of the chart that is counted, in CSS pixels. */
const partPx = 34;

export function drawCounts(pen: Pen, overlay: PlacedOverlay, places: Iterable<Cell>): void {
  const { planned, placed, size, inks } = overlay;
  const { view, ratio } = placed;
  const { columns, rows } = planned.tables;
  const across = perPart(columns, size.pitchMm * view.scale, partPx * ratio);
  const down = perPart(rows, size.rowHeightMm * view.scale, partPx * ratio);
  const parts = Math.ceil(columns / across);
  const counts = new Uint32Array(parts * Math.ceil(rows / down));
  for (const { row, column } of places)
    counts[Math.floor(row / down) * parts + Math.floor(column / across)]!++;
  const most = counts.reduce((max, each) => Math.max(max, each), 1);
  pen.font = `600 ${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  counts.forEach((count, part) => {
    if (count === 0) return;
    const [left, top] = [(part % parts) * across, Math.floor(part / parts) * down];
    const x = columnEdge(view, size, left);
    const y = rowEdge(view, size, top);
    const width = columnEdge(view, size, Math.min(columns, left + across)) - x;
    const height = rowEdge(view, size, Math.min(rows, top + down)) - y;
    pen.globalAlpha = 0.75 * (count / most);
    pen.fillStyle = inks.accent;
    pen.fillRect(x, y, width, height);
    pen.globalAlpha = 1;
    pen.lineJoin = 'round';
    pen.lineWidth = 3 * ratio;
    pen.strokeStyle = inks.paper;
    pen.strokeText(String(count), x + width / 2, y + height / 2);
    pen.fillStyle = inks.ink;
    pen.fillText(String(count), x + width / 2, y + height / 2);
  });
}

/** Cells of one part, so that the parts of a side are about as large as wished and all alike, but for the last. */
function perPart(cells: number, cellPx: number, wishedPx: number): number {
  const parts = Math.max(1, Math.round((cells * cellPx) / wishedPx));
  return Math.ceil(cells / parts);
}
