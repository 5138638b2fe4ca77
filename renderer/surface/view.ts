/**
 * Where the chart lies on the screen. All in device pixels, so that cells meet without seams: a cell's edge is a
 * whole pixel, and neighbours share it. `scale` is pixels per mm of the hanging; the origin is the top left corner of
 * row 1, cord 1.
 */
import type { Cell } from '../../shared/chart/tools/cell.ts';

export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface CellSize {
  readonly pitchMm: number;
  readonly rowHeightMm: number;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const largestCellPx = 72;
const smallestCellPx = 0.25;

/** Left edge of column `column` (from 0), a whole pixel. */
export function columnEdge({ scale, x }: View, { pitchMm }: CellSize, column: number): number {
  return Math.round(x) + Math.round(column * pitchMm * scale);
}

/** Upper edge of row `row` (from 0), a whole pixel. */
export function rowEdge({ scale, y }: View, { rowHeightMm }: CellSize, row: number): number {
  return Math.round(y) + Math.round(row * rowHeightMm * scale);
}

/** The cell at a point; outside the chart where the point is. */
export function cellAt(
  { scale, x, y }: View,
  { pitchMm, rowHeightMm }: CellSize,
  px: number,
  py: number,
): Cell {
  return {
    row: Math.floor((py - Math.round(y)) / (rowHeightMm * scale)),
    column: Math.floor((px - Math.round(x)) / (pitchMm * scale)),
  };
}

/** The view in which a box of the hanging (in mm) fills a screen, with a margin around it. */
export function fitted(box: Box, widthPx: number, heightPx: number, marginPx: number): View {
  const across = Math.max(1, widthPx - 2 * marginPx) / (box.right - box.left);
  const down = Math.max(1, heightPx - 2 * marginPx) / (box.bottom - box.top);
  return middled(box, widthPx, heightPx, Math.min(across, down));
}

/** The view in which a box of the hanging (in mm) lies in the middle of a screen, at a scale. */
export function middled(box: Box, widthPx: number, heightPx: number, scale: number): View {
  return {
    scale,
    x: (widthPx - (box.left + box.right) * scale) / 2,
    y: (heightPx - (box.top + box.bottom) * scale) / 2,
  };
}

/** Zoomed by a factor, with the point staying where it is; within what can be seen and drawn. */
export function zoomed(view: View, { pitchMm }: CellSize, factor: number, px: number, py: number): View {
  const wanted = view.scale * factor;
  const scale = Math.min(largestCellPx / pitchMm, Math.max(smallestCellPx / pitchMm, wanted));
  const real = scale / view.scale;
  return { scale, x: px - (px - view.x) * real, y: py - (py - view.y) * real };
}

export function panned(view: View, dx: number, dy: number): View {
  return { ...view, x: view.x + dx, y: view.y + dy };
}
