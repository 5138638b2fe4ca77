/**
 * The rows that take the most: all others lie under paper, and each band of them has an outline, a pointer at both edges,
 * and its numbers on a plate, where plates leave room for one another.
 */
import { strokeTwoTones } from '../../surface/two-tones.ts';
import { columnEdge, rowEdge } from '../../surface/view.ts';
import { type RowFacts, worstRows } from '../plans/row-facts.ts';
import { drawRowBars } from './draw-row-bars.ts';
import type { Pen, PlacedOverlay } from './overlay.ts';
import { drawPlate } from './plate.ts';
import { veilOtherRows } from './veils.ts';

/** Rows side by side, from 0. */
interface Band {
  readonly top: number;
  readonly bottom: number;
}

/** Height of a plate with room to the next, and reach of a pointer: CSS pixels. */
const plateEvery = 18;
const pointer = 7;

export function drawWorstRows(pen: Pen, overlay: PlacedOverlay): void {
  const worst = worstRows(overlay.planned.rows, overlay.rowsBy);
  veilOtherRows(
    pen,
    overlay,
    worst.map(({ row }) => row - 1),
  );
  const bands = bandsOf(worst).filter(
    ({ top, bottom }) => bottom >= overlay.inSight.top && top <= overlay.inSight.bottom,
  );
  outlineBands(pen, overlay, bands);
  pointAtBands(pen, overlay, bands);
  numberBands(pen, overlay, bands);
  drawRowBars(pen, overlay, overlay.rowsBy);
}

/** From the top down; rows that are neighbours share one. */
export function bandsOf(worst: readonly RowFacts[]): Band[] {
  const bands: { top: number; bottom: number }[] = [];
  for (const row of worst.map((each) => each.row - 1).sort((a, b) => a - b)) {
    const band = bands.at(-1);
    if (band?.bottom === row - 1) band.bottom = row;
    else bands.push({ top: row, bottom: row });
  }
  return bands;
}

function outlineBands(pen: Pen, overlay: PlacedOverlay, bands: readonly Band[]): void {
  const { ratio } = overlay.placed;
  const [left, right] = sidesOf(overlay);
  pen.beginPath();
  for (const band of bands) {
    const [top, bottom] = edgesOf(overlay, band);
    pen.rect(left - ratio, top - ratio, right - left + 2 * ratio, bottom - top + 2 * ratio);
  }
  strokeTwoTones(pen, { ratio, width: 1.25, halo: 1.5 });
}

function pointAtBands(pen: Pen, overlay: PlacedOverlay, bands: readonly Band[]): void {
  const reach = pointer * overlay.placed.ratio;
  const [left, right] = sidesOf(overlay);
  pen.beginPath();
  for (const band of bands) {
    const [top, bottom] = edgesOf(overlay, band);
    const y = (top + bottom) / 2;
    for (const [edge, way] of [
      [left - 2 * overlay.placed.ratio, -1],
      [right + 2 * overlay.placed.ratio, 1],
    ] as const) {
      pen.moveTo(edge, y);
      pen.lineTo(edge + way * reach, y - reach * 0.7);
      pen.lineTo(edge + way * reach, y + reach * 0.7);
      pen.closePath();
    }
  }
  pen.fillStyle = overlay.inks.accent;
  pen.fill();
}

/** At the left end of what is in sight of the band, or below the plate before. */
function numberBands(pen: Pen, overlay: PlacedOverlay, bands: readonly Band[]): void {
  const { ratio } = overlay.placed;
  const x = Math.max(columnEdge(overlay.placed.view, overlay.size, overlay.inSight.left), 0) + 30 * ratio;
  let free = Number.NEGATIVE_INFINITY;
  for (const band of bands) {
    const [top, bottom] = edgesOf(overlay, band);
    const y = (top + bottom) / 2;
    if (y < free) continue;
    free = y + plateEvery * ratio;
    const words = band.top === band.bottom ? `${band.top + 1}` : `${band.top + 1}-${band.bottom + 1}`;
    drawPlate(pen, words, x, y, overlay);
  }
}

function sidesOf({ placed: { view }, size, planned }: PlacedOverlay): [left: number, right: number] {
  return [columnEdge(view, size, 0), columnEdge(view, size, planned.tables.columns)];
}

function edgesOf({ placed: { view }, size }: PlacedOverlay, { top, bottom }: Band): [number, number] {
  return [rowEdge(view, size, top), rowEdge(view, size, bottom + 1)];
}
