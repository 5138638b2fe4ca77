/**
 * Pins on the chart. Each kind has a shape of its own, dark and light in it: a bar where a strand is cut, a cross that no
 * carry passes, an arrow along a pinned carry. Beside one that is not obeyed stands a '!'. One that is only pointed at has
 * its cell outlined too.
 */
import { goesRight } from '../../../shared/chart/chart.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { Pin } from '../../../shared/design/schema.ts';
import { strokeTwoTones } from '../../surface/two-tones.ts';
import { cellPx, middleOf, type Pen, type PlacedOverlay } from '../overlay/overlay.ts';
import { drawPlate } from '../overlay/plate.ts';
import { addCells } from '../overlay/veils.ts';

export function drawPins(pen: Pen, overlay: PlacedOverlay): void {
  for (const { pin, fault } of overlay.pins) {
    if (!isInSight(overlay, pin)) continue;
    const [x, y] = drawers[pin.kind](pen, overlay, pin);
    const reach = reachOf(overlay);
    if (fault !== '') drawPlate(pen, '!', x + reach, y - reach - 8 * overlay.placed.ratio, overlay);
  }
  const { pinAhead } = overlay;
  if (pinAhead && isInSight(overlay, pinAhead)) {
    drawers[pinAhead.kind](pen, overlay, pinAhead);
    outline(pen, overlay, { row: pinAhead.row - 1, column: pinAhead.cord - 1 });
  }
  if (overlay.carryFrom) outline(pen, overlay, overlay.carryFrom);
}

type Point = readonly [x: number, y: number];

/** Each gives the middle of its sign. */
const drawers: Readonly<Record<Pin['kind'], (pen: Pen, overlay: PlacedOverlay, pin: Pin) => Point>> = {
  cut(pen, overlay, pin) {
    const { startCorner } = overlay.planned.tables;
    const way = goesRight(startCorner, pin.row - 1) ? 1 : -1;
    const [middle, y] = middleOf(overlay, { row: pin.row - 1, column: pin.cord - 1 });
    const x = middle + (way * overlay.size.pitchMm * overlay.placed.view.scale) / 2;
    const reach = reachOf(overlay) * 1.3;
    pen.beginPath();
    pen.moveTo(x, y - reach);
    pen.lineTo(x, y + reach);
    strokeTwoTones(pen, { ratio: overlay.placed.ratio, width: 3 });
    return [x, y];
  },

  'no-carry'(pen, overlay, pin) {
    const [x, y] = middleOf(overlay, { row: pin.row - 1, column: pin.cord - 1 });
    const reach = reachOf(overlay) * 0.8;
    pen.beginPath();
    pen.moveTo(x - reach, y - reach);
    pen.lineTo(x + reach, y + reach);
    pen.moveTo(x - reach, y + reach);
    pen.lineTo(x + reach, y - reach);
    strokeTwoTones(pen, { ratio: overlay.placed.ratio, width: 2 });
    return [x, y];
  },

  carry(pen, overlay, { row, cord, toRow = row, toCord = cord }) {
    const [x, y] = middleOf(overlay, { row: row - 1, column: cord - 1 });
    const [toX, toY] = middleOf(overlay, { row: toRow - 1, column: toCord - 1 });
    const angle = Math.atan2(toY - y, toX - x);
    const reach = reachOf(overlay) * 1.1;
    const wing = (turn: number) =>
      pen.lineTo(toX - reach * Math.cos(angle + turn), toY - reach * Math.sin(angle + turn));
    pen.beginPath();
    pen.moveTo(x, y);
    pen.lineTo(toX, toY);
    wing(0.6);
    pen.moveTo(toX, toY);
    wing(-0.6);
    strokeTwoTones(pen, { ratio: overlay.placed.ratio, width: 2 });
    return [x, y];
  },
};

/** Of a sign from its middle, in device pixels. */
function reachOf(overlay: PlacedOverlay): number {
  return Math.min(8, Math.max(4, cellPx(overlay) * 0.4)) * overlay.placed.ratio;
}

/** A pinned carry that only passes the sight is drawn too. Pins of cells that are no more have no place. */
function isInSight(
  { inSight, planned }: PlacedOverlay,
  { row, cord, toRow = row, toCord = cord }: Pin,
): boolean {
  const { columns, rows } = planned.tables;
  if (Math.max(row, toRow) > rows || Math.max(cord, toCord) > columns) return false;
  const isRow = Math.max(row, toRow) > inSight.top && Math.min(row, toRow) - 1 <= inSight.bottom;
  return isRow && Math.max(cord, toCord) > inSight.left && Math.min(cord, toCord) - 1 <= inSight.right;
}

function outline(pen: Pen, overlay: PlacedOverlay, { row, column }: Cell): void {
  pen.beginPath();
  addCells(pen, overlay, { left: column, right: column, top: row, bottom: row });
  strokeTwoTones(pen, { ratio: overlay.placed.ratio, width: 2, dash: [3, 3] });
}
