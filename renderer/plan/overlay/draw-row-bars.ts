/**
 * What each row takes as a bar beside it, at the right of the chart. Where rows are too thin for a bar of their own, one
 * bar stands for several and shows the most of them. The figures stand in a column of their own, beyond the longest bar:
 * each is the most of the bars that it stands beside.
 */
import { columnEdge, rowEdge } from '../../surface/view.ts';
import type { RowFacts, RowMeasure } from '../plans/row-facts.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';

/** Length of the longest bar, room for a row's number beside the chart, and room for a bar's figure: CSS pixels. */
const bar = { longest: 56, beside: 48, figure: 26, least: 5, figureEvery: 13 };

export function drawRowBars(pen: Pen, overlay: PlacedOverlay, by: RowMeasure): void {
  const { placed, size, inSight, inks, planned, rightPx } = overlay;
  const { view, ratio } = placed;
  const most = Math.max(1, mostIn(planned.rows, by, 0, planned.rows.length));
  const width = (bar.longest + bar.figure + 8) * ratio;
  const right = columnEdge(view, size, planned.tables.columns);
  const x = Math.min(right + bar.beside * ratio, rightPx - width);
  const edge = (row: number) => rowEdge(view, size, Math.min(row, planned.rows.length));
  const top = edge(inSight.top);
  pen.fillStyle = inks.paper;
  pen.globalAlpha = 0.85;
  pen.fillRect(x - 4 * ratio, top, width, edge(inSight.bottom + 1) - top);
  pen.globalAlpha = 1;
  pen.font = `600 ${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = 'left';
  pen.textBaseline = 'middle';
  const { barRows, barsToFigure } = groupsAt((size.rowHeightMm * view.scale) / ratio);
  const figureRows = barRows * barsToFigure;
  for (let row = inSight.top - (inSight.top % figureRows); row <= inSight.bottom; row += figureRows) {
    pen.fillStyle = inks.accent;
    for (let from = row; from < Math.min(row + figureRows, planned.rows.length); from += barRows) {
      const length = (bar.longest * ratio * mostIn(planned.rows, by, from, barRows)) / most;
      const height = Math.max(1, edge(from + barRows) - edge(from) - ratio);
      if (length > 0) pen.fillRect(x, edge(from), Math.max(ratio, length), height);
    }
    // The last figure needs as much room as the others.
    if (row > 0 && edge(row + figureRows) - edge(row) < (bar.figureEvery - 3) * ratio) continue;
    pen.fillStyle = inks.ink;
    const figure = mostIn(planned.rows, by, row, figureRows);
    pen.fillText(String(figure), x + (bar.longest + 5) * ratio, (edge(row) + edge(row + figureRows)) / 2);
  }
}

/** How many rows share a bar, and how many bars a figure, where a row is so high in CSS pixels. */
export function groupsAt(rowPx: number): { readonly barRows: number; readonly barsToFigure: number } {
  const barRows = Math.max(1, Math.ceil(bar.least / rowPx));
  return { barRows, barsToFigure: Math.max(1, Math.ceil(bar.figureEvery / (barRows * rowPx))) };
}

function mostIn(rows: readonly RowFacts[], by: RowMeasure, from: number, count: number): number {
  return rows.slice(from, from + count).reduce((most, row) => Math.max(most, row[by]), 0);
}
