/**
 * Strands that hang below each row: rows tinted, and at the right a bar with its figure for each. Where rows are too
 * thin for a bar of their own, one bar stands for several and shows the most of them.
 */
import { columnEdge, rowEdge } from '../../surface/view.ts';
import type { RowFacts } from '../plans/row-facts.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';
import { addCells } from './veils.ts';

/** Length of the longest bar, room for a row's number beside the chart, and room for a bar's figure: CSS pixels. */
const bar = { longest: 56, beside: 48, figure: 26, least: 5, figureFrom: 11 };

export function drawLive(pen: Pen, overlay: PlacedOverlay): void {
  const { planned, inSight, inks } = overlay;
  const most = Math.max(1, planned.figures.liveMax);
  pen.fillStyle = inks.accent;
  for (let row = inSight.top; row <= inSight.bottom; row++) {
    const { live } = planned.rows[row]!;
    if (live === 0) continue;
    pen.globalAlpha = 0.62 * (live / most);
    pen.beginPath();
    addCells(pen, overlay, { ...inSight, top: row, bottom: row });
    pen.fill();
  }
  pen.globalAlpha = 1;
  drawLiveBars(pen, overlay);
}

export function drawLiveBars(pen: Pen, overlay: PlacedOverlay): void {
  const { placed, size, inSight, inks, planned, rightPx } = overlay;
  const most = Math.max(1, planned.figures.liveMax);
  const { view, ratio } = placed;
  const right = columnEdge(view, size, planned.tables.columns);
  const width = (bar.longest + bar.figure + 8) * ratio;
  const x = Math.min(right + bar.beside * ratio, rightPx - width);
  const [top, bottom] = [rowEdge(view, size, inSight.top), rowEdge(view, size, inSight.bottom + 1)];
  pen.fillStyle = inks.paper;
  pen.globalAlpha = 0.85;
  pen.fillRect(x - 4 * ratio, top, width, bottom - top);
  pen.globalAlpha = 1;
  const step = Math.max(1, Math.ceil((bar.least * ratio) / (size.rowHeightMm * view.scale)));
  pen.font = `600 ${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = 'left';
  pen.textBaseline = 'middle';
  let figureBelow = Number.NEGATIVE_INFINITY;
  for (let row = inSight.top - (inSight.top % step); row <= inSight.bottom; row += step) {
    const live = mostIn(planned.rows, row, step);
    const [from, to] = [rowEdge(view, size, row), rowEdge(view, size, row + step)];
    const length = (bar.longest * ratio * live) / most;
    pen.fillStyle = inks.accent;
    pen.fillRect(x, from, Math.max(ratio, length), Math.max(1, to - from - ratio));
    // Where bars are thinner than figures, some go without.
    if ((from + to) / 2 < figureBelow) continue;
    figureBelow = (from + to) / 2 + bar.figureFrom * ratio;
    pen.fillStyle = inks.ink;
    pen.fillText(String(live), x + length + 4 * ratio, (from + to) / 2);
  }
}

function mostIn(rows: readonly RowFacts[], from: number, count: number): number {
  return rows.slice(from, from + count).reduce((most, { live }) => Math.max(most, live), 0);
}
