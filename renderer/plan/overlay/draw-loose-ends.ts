/**
 * Loose ends by place: a sign at each end of each piece, or, where cells are too small, their number in each part of the
 * chart.
 */
import { columnEdge, rowEdge } from '../../surface/view.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';
import { drawSign } from './signs.ts';

/** Below this width of a cell signs would run into one another. */
const signsFromPx = 6;
/** Width of a part of the chart that is counted, in CSS pixels. */
const partPx = 34;

export function drawLooseEnds(pen: Pen, overlay: PlacedOverlay): void {
  if (cellPx(overlay) >= signsFromPx) drawSigns(pen, overlay);
  else drawCounts(pen, overlay);
}

function drawSigns(pen: Pen, overlay: PlacedOverlay): void {
  const { stretches, pieces } = overlay.planned.tables;
  const { top, bottom, left, right } = overlay.inSight;
  const radius = Math.min(6, cellPx(overlay) * 0.34) * overlay.placed.ratio;
  const isInSight = (row: number, column: number) =>
    row >= top && row <= bottom && column >= left && column <= right;
  const shift = cellPx(overlay) * overlay.placed.ratio * 0.22;
  for (let p = 0; p < pieces.count; p++) {
    const [first, last] = [pieces.first[p]!, pieces.last[p]!];
    const start = { row: stretches.row[first]!, column: stretches.from[first]! };
    const end = { row: stretches.row[last]!, column: stretches.to[last]! };
    // A piece of one knot has both in one cell.
    const apart = start.row === end.row && start.column === end.column ? shift : 0;
    if (isInSight(end.row, end.column)) {
      const [x, y] = middleOf(overlay, end);
      drawSign(pen, 'end', x + apart, y + apart, radius);
    }
    if (isInSight(start.row, start.column)) {
      const [x, y] = middleOf(overlay, start);
      drawSign(pen, 'attach', x - apart, y - apart, radius);
    }
  }
}

function drawCounts(pen: Pen, overlay: PlacedOverlay): void {
  const { planned, placed, size, inks } = overlay;
  const { view, ratio } = placed;
  const { columns, rows, stretches, pieces } = planned.tables;
  const across = perPart(columns, size.pitchMm * view.scale, partPx * ratio);
  const down = perPart(rows, size.rowHeightMm * view.scale, partPx * ratio);
  const parts = Math.ceil(columns / across);
  const counts = new Uint32Array(parts * Math.ceil(rows / down));
  const count = (row: number, column: number) => {
    counts[Math.floor(row / down) * parts + Math.floor(column / across)]!++;
  };
  for (let p = 0; p < pieces.count; p++) {
    count(stretches.row[pieces.first[p]!]!, stretches.from[pieces.first[p]!]!);
    count(stretches.row[pieces.last[p]!]!, stretches.to[pieces.last[p]!]!);
  }
  const most = counts.reduce((max, each) => Math.max(max, each), 1);
  pen.font = `600 ${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  counts.forEach((ends, part) => {
    if (ends === 0) return;
    const [left, top] = [(part % parts) * across, Math.floor(part / parts) * down];
    const x = columnEdge(view, size, left);
    const y = rowEdge(view, size, top);
    const width = columnEdge(view, size, Math.min(columns, left + across)) - x;
    const height = rowEdge(view, size, Math.min(rows, top + down)) - y;
    pen.globalAlpha = 0.75 * (ends / most);
    pen.fillStyle = inks.accent;
    pen.fillRect(x, y, width, height);
    pen.globalAlpha = 1;
    pen.lineJoin = 'round';
    pen.lineWidth = 3 * ratio;
    pen.strokeStyle = inks.paper;
    pen.strokeText(String(ends), x + width / 2, y + height / 2);
    pen.fillStyle = inks.ink;
    pen.fillText(String(ends), x + width / 2, y + height / 2);
  });
}

/** Cells of one part, so that the parts of a side are about as large as wished and all alike, but for the last. */
function perPart(cells: number, cellPx: number, wishedPx: number): number {
  const parts = Math.max(1, Math.round((cells * cellPx) / wishedPx));
  return Math.ceil(cells / parts);
}
