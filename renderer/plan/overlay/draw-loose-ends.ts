/**
 * Loose ends by place: a sign at each end of each piece, or, where cells are too small, their number in each part of the
 * chart.
 */
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { PlanTables } from '../plans/plan-tables.ts';
import { drawCounts } from './draw-counts.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from './overlay.ts';
import { drawSign } from './signs.ts';

/** Below this width of a cell signs would run into one another. */
const signsFromPx = 6;

export function drawLooseEnds(pen: Pen, overlay: PlacedOverlay): void {
  if (cellPx(overlay) >= signsFromPx) drawSigns(pen, overlay);
  else drawCounts(pen, overlay, endsOf(overlay.planned.tables));
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

function* endsOf({ stretches, pieces }: PlanTables): Generator<Cell> {
  for (let p = 0; p < pieces.count; p++) {
    const [first, last] = [pieces.first[p]!, pieces.last[p]!];
    yield { row: stretches.row[first]!, column: stretches.from[first]! };
    yield { row: stretches.row[last]!, column: stretches.to[last]! };
  }
}
