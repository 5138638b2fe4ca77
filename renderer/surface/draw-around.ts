/**
 * What hangs around the chart: the hanging cord, the dowel, lark's heads, cords and fringe. Only what is in sight is
 * drawn; where cords are thinner than a few pixels they become one sheet of rope.
 */
import { cordX, type HangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import type { CellBlock } from './chart-bitmap.ts';
import type { Inks } from './look.ts';
import { columnEdge, rowEdge, type View } from './view.ts';

type Pen = CanvasRenderingContext2D;

/** Below this pitch single cords can't be told apart. */
const cordsFromPx = 4;
/** About how far apart the lines are that stand for cords too thin to be drawn. */
const stripePx = 4;
/** Below this pitch heads would only blur the dowel and its numbers. */
const headsFromPx = 5;

/** `bare` tells the columns (from 0) in which cords show between knots: 1, else 0. Elsewhere knots hide them. */
export function drawAround(
  pen: Pen,
  view: View,
  geometry: HangingGeometry,
  inks: Inks,
  bare: Uint8Array,
  widthPx: number,
): void {
  drawHanger(pen, view, geometry, inks);
  if (geometry.pitchMm * view.scale < cordsFromPx) drawRopeSheet(pen, view, geometry, inks, bare);
  else drawCords(pen, view, geometry, inks, bare, widthPx);
  drawDowel(pen, view, geometry, inks);
  if (geometry.pitchMm * view.scale >= headsFromPx) drawHeads(pen, view, geometry, inks, widthPx);
}

function drawHanger(pen: Pen, { scale, x, y }: View, { hanger, cordMm }: HangingGeometry, inks: Inks): void {
  const [from, to] = [x + hanger.fromX * scale, x + hanger.toX * scale];
  // A curve's highest point lies at three quarters of its handles' height.
  const handle = y + (hanger.y + ((hanger.topY - hanger.y) * 4) / 3) * scale;
  pen.strokeStyle = inks.ropeEdge;
  pen.lineWidth = Math.max(1.5, cordMm * scale * 0.6);
  pen.lineCap = 'round';
  pen.beginPath();
  pen.moveTo(from, y + hanger.y * scale);
  pen.bezierCurveTo(
    from + (to - from) * 0.3,
    handle,
    from + (to - from) * 0.7,
    handle,
    to,
    y + hanger.y * scale,
  );
  pen.stroke();
}

/** Above the chart and below it; behind it only where a cord shows. */
function drawRopeSheet(pen: Pen, view: View, geometry: HangingGeometry, inks: Inks, bare: Uint8Array): void {
  const { x, y, scale } = view;
  const { left, right, top: chartTop, bottom: chartBottom } = chartEdges(view, geometry);
  const top = y + (geometry.dowel.y + geometry.dowel.diameter / 2) * scale;
  pen.beginPath();
  pen.rect(left, top, right - left, (bare.includes(1) ? chartBottom : chartTop + 1) - top);
  pen.moveTo(left, chartBottom - 1);
  geometry.cordEndsMm.forEach((end, column) => {
    pen.lineTo(x + cordX(geometry, column) * scale, y + end * scale);
  });
  pen.lineTo(right, chartBottom - 1);
  pen.closePath();
  pen.fillStyle = inks.rope;
  pen.fill();
  // Lines a few pixels apart, so that it still reads as cords.
  pen.save();
  pen.clip();
  const step = Math.max(1, Math.ceil(stripePx / (geometry.pitchMm * scale)));
  const height = (geometry.bounds.bottom - geometry.bounds.top) * scale;
  pen.fillStyle = inks.ropeEdge;
  for (let column = 0; column <= geometry.columns; column += step)
    pen.fillRect(columnEdge(view, geometry, column), top, 1, height);
  pen.restore();
}

function drawCords(
  pen: Pen,
  view: View,
  geometry: HangingGeometry,
  inks: Inks,
  bare: Uint8Array,
  widthPx: number,
): void {
  const { x, y, scale } = view;
  const width = Math.min(geometry.cordMm, geometry.pitchMm * 0.86) * scale;
  const top = y + (geometry.dowel.y + geometry.dowel.diameter) * scale;
  const { top: chartTop, bottom: chartBottom } = chartEdges(view, geometry);
  const [first, last] = columnsInSight(view, geometry, widthPx);
  pen.lineCap = 'round';
  pen.beginPath();
  for (let c = first; c <= last; c++) {
    const middle = x + cordX(geometry, c) * scale;
    const end = Math.max(top, y + (geometry.cordEndsMm[c]! - geometry.cordMm / 2) * scale);
    pen.moveTo(middle, top);
    if (bare[c] !== 1) {
      // Round ends reach beyond a line's own, so these lie a whole cord behind the knots.
      pen.lineTo(middle, Math.min(end, chartTop));
      pen.moveTo(middle, Math.min(end, Math.max(chartTop, chartBottom - width)));
    }
    pen.lineTo(middle, end);
  }
  pen.strokeStyle = inks.ropeEdge;
  pen.lineWidth = width;
  pen.stroke();
  pen.strokeStyle = inks.rope;
  pen.lineWidth = width * 0.7;
  pen.stroke();
}

function drawDowel(pen: Pen, { x, y, scale }: View, { dowel }: HangingGeometry, { wood }: Inks): void {
  const left = x + dowel.x * scale;
  const top = y + dowel.y * scale;
  const [length, height] = [dowel.length * scale, dowel.diameter * scale];
  const bar = (offset: number, thick: number, inset: number, color: string) => {
    pen.fillStyle = color;
    pen.beginPath();
    pen.roundRect(
      left + inset,
      top + offset * height,
      length - 2 * inset,
      thick * height,
      (thick * height) / 2,
    );
    pen.fill();
  };
  bar(0, 1, 0, wood.shade);
  bar(0, 0.86, 0, wood.body);
  bar(0.16, 0.18, height * 0.4, wood.light);
}

function drawHeads(pen: Pen, view: View, geometry: HangingGeometry, inks: Inks, widthPx: number): void {
  const { x, y, scale } = view;
  const { dowel, heads } = geometry;
  const [first, last] = columnsInSight(view, geometry, widthPx);
  const cord = Math.min(geometry.cordMm, geometry.pitchMm * 0.6) * scale;
  const top = y + dowel.y * scale;
  const bottom = y + (dowel.y + dowel.diameter) * scale;
  pen.lineCap = 'round';
  pen.beginPath();
  for (const head of heads) {
    if (head.right < first || head.left > last) continue;
    const reach = (head.width * scale - cord) / 2;
    const middle = x + head.x * scale;
    for (const side of [-0.6, 0.6]) {
      pen.moveTo(middle + side * reach, top + cord * 0.2);
      pen.lineTo(middle + side * reach, bottom + cord * 0.6);
    }
    pen.moveTo(middle - reach, bottom + cord * 0.55);
    pen.lineTo(middle + reach, bottom + cord * 0.55);
  }
  pen.strokeStyle = inks.ropeEdge;
  pen.lineWidth = cord;
  pen.stroke();
  pen.strokeStyle = inks.rope;
  pen.lineWidth = cord * 0.7;
  pen.stroke();
}

/** First and last column (from 0) of which anything is on a screen of that width; one more at each side. */
export function columnsInSight(
  { scale, x }: View,
  { pitchMm, columns }: Pick<HangingGeometry, 'pitchMm' | 'columns'>,
  widthPx: number,
): [number, number] {
  const first = Math.floor(-x / (pitchMm * scale)) - 1;
  const last = Math.ceil((widthPx - x) / (pitchMm * scale)) + 1;
  return [Math.max(0, first), Math.min(columns - 1, last)];
}

export function rowsInSight(
  view: View,
  { rowHeightMm, rows }: Pick<HangingGeometry, 'rowHeightMm' | 'rows'>,
  heightPx: number,
): [number, number] {
  const first = Math.floor(-view.y / (rowHeightMm * view.scale)) - 1;
  const last = Math.ceil((heightPx - view.y) / (rowHeightMm * view.scale)) + 1;
  return [Math.max(0, first), Math.min(rows - 1, last)];
}

type Cells = Pick<HangingGeometry, 'pitchMm' | 'rowHeightMm' | 'columns' | 'rows'>;

/** The cells of which anything is on the screen, and one more at each side; null where the chart is out of sight. */
export function cellsInSight(view: View, cells: Cells, widthPx: number, heightPx: number): CellBlock | null {
  const [left, right] = columnsInSight(view, cells, widthPx);
  const [top, bottom] = rowsInSight(view, cells, heightPx);
  return left > right || top > bottom ? null : { left, top, right, bottom };
}

/** The knotted picture's edges on screen. */
export function chartEdges(view: View, geometry: Cells) {
  return {
    left: columnEdge(view, geometry, 0),
    right: columnEdge(view, geometry, geometry.columns),
    top: rowEdge(view, geometry, 0),
    bottom: rowEdge(view, geometry, geometry.rows),
  };
}
