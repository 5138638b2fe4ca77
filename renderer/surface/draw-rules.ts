/**
 * Rules every ten cords and rows, cord numbers on the dowel, and each row's number and arrow on the side where the
 * row starts. Numbers stay in sight when the dowel or the edge of the chart is not; tapes at the screen's edge leave
 * room for themselves.
 */

import { goesRight } from '../../shared/chart/chart.ts';
import type { HangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import type { StartCorner } from '../../shared/design/schema.ts';
import { chartEdges, columnsInSight, rowsInSight } from './draw-around.ts';
import type { Inks } from './look.ts';
import type { Placed } from './placed.ts';
import { columnEdge, rowEdge, type View } from './view.ts';

type Pen = CanvasRenderingContext2D;

export interface Rules extends Placed {
  readonly geometry: HangingGeometry;
  readonly startCorner: StartCorner;
  readonly inks: Inks;
  /** Rules every ten cords and rows. */
  readonly hasTens: boolean;
  /** Width of a tape at the left, right and upper edges, in CSS pixels; 0 where none lies there. */
  readonly tapePx: { readonly side: number; readonly top: number };
}

export function drawRules(pen: Pen, rules: Rules): void {
  const { view } = rules;
  if (rules.hasTens) drawTens(pen, view, rules);
  drawMargins(pen, view, rules);
  drawCordNumbers(pen, view, rules);
  drawRowNumbers(pen, view, rules);
}

function drawTens(pen: Pen, view: View, { geometry, widthPx, heightPx, ratio }: Rules): void {
  if (geometry.pitchMm * view.scale * 10 < 24 * ratio) return;
  const { left, right, top, bottom } = chartEdges(view, geometry);
  const [firstColumn, lastColumn] = columnsInSight(view, geometry, widthPx);
  const [firstRow, lastRow] = rowsInSight(view, geometry, heightPx);
  const line = Math.max(1, Math.round(ratio));
  pen.beginPath();
  for (let c = Math.ceil((firstColumn + 1) / 10) * 10; c <= lastColumn; c += 10)
    pen.rect(columnEdge(view, geometry, c), top, line, bottom - top);
  for (let r = Math.ceil((firstRow + 1) / 10) * 10; r <= lastRow; r += 10)
    pen.rect(left, rowEdge(view, geometry, r), right - left, line);
  pen.fillStyle = 'rgb(30 26 20 / 45%)';
  pen.fill();
  // A light line beside the dark one, so that rules show on dark yarns as well.
  pen.translate(line, line);
  pen.fillStyle = 'rgb(255 250 240 / 35%)';
  pen.fill();
  pen.translate(-line, -line);
}

/** Where numbers must stand on the chart to stay in sight, a strip of paper lies below them. */
function drawMargins(pen: Pen, view: View, rules: Rules): void {
  const { inks, widthPx, heightPx } = rules;
  const { left, right, upper } = insideStrips(view, rules);
  pen.fillStyle = inks.paper;
  pen.fillRect(0, 0, left, heightPx);
  pen.fillRect(right, 0, widthPx - right, heightPx);
  pen.fillRect(0, 0, widthPx, upper);
}

/** What the strips of paper leave of the screen, in device pixels. */
export function insideStrips(
  view: View,
  rules: Pick<Rules, 'geometry' | 'widthPx' | 'ratio' | 'tapePx'>,
): { readonly left: number; readonly right: number; readonly upper: number } {
  const { left, right, top } = chartEdges(view, rules.geometry);
  const { side, upper } = stripsOf(rules);
  return {
    left: left < side ? side : 0,
    right: right > rules.widthPx - side ? rules.widthPx - side : rules.widthPx,
    upper: top < upper ? upper : 0,
  };
}

const stripPx = 50;
const topStripPx = 22;

/** Strips of paper below the numbers, in device pixels: at the sides, and at the upper edge. */
function stripsOf({ ratio, tapePx }: Pick<Rules, 'ratio' | 'tapePx'>) {
  return { side: (stripPx + tapePx.side) * ratio, upper: (topStripPx + tapePx.top) * ratio };
}

function drawCordNumbers(pen: Pen, view: View, rules: Rules): void {
  const { geometry, inks, widthPx, ratio } = rules;
  const onWood = { ink: '#2b1c0c', paper: inks.wood.plate };
  const step = stepOf(geometry.pitchMm * view.scale, 30 * ratio);
  const [first, last] = columnsInSight(view, geometry, widthPx);
  const onDowel = view.y + (geometry.dowel.y + geometry.dowel.diameter / 2) * view.scale;
  const isOnDowel =
    onDowel > (10 + rules.tapePx.top) * ratio && geometry.dowel.diameter * view.scale > 9 * ratio;
  const aboveDowel = view.y + geometry.dowel.y * view.scale - 9 * ratio;
  const y = Math.max((11 + rules.tapePx.top) * ratio, isOnDowel ? onDowel : aboveDowel);
  const { left, right } = chartEdges(view, geometry);
  const { side } = stripsOf(rules);
  const leastX = left < side ? side + 8 * ratio : 0;
  const mostX = right > widthPx - side ? widthPx - side - 8 * ratio : widthPx;
  for (let c = first; c <= last; c++) {
    if (c !== 0 && (c + 1) % step !== 0) continue;
    if (c === 0 && step > 1 && step * geometry.pitchMm * view.scale < 40 * ratio) continue;
    const x = view.x + (c + 0.5) * geometry.pitchMm * view.scale;
    if (x < leastX || x > mostX) continue;
    if (isOnDowel) drawPlate(pen, x, y, String(c + 1).length, onWood.paper, ratio);
    label(pen, String(c + 1), x, y, 'center', isOnDowel ? onWood : inks, ratio);
  }
}

/** A plate of wood under a number, so that the heads' cords don't run through it. */
function drawPlate(pen: Pen, x: number, y: number, digits: number, color: string, ratio: number): void {
  const width = (6.4 * digits + 7) * ratio;
  pen.fillStyle = color;
  pen.beginPath();
  pen.roundRect(x - width / 2, y - 7 * ratio, width, 14 * ratio, 4 * ratio);
  pen.fill();
}

function drawRowNumbers(pen: Pen, view: View, rules: Rules): void {
  const { geometry, startCorner, inks, widthPx, heightPx, ratio } = rules;
  const { left, right, top } = chartEdges(view, geometry);
  const { upper } = stripsOf(rules);
  const leastY = top < upper ? upper + 8 * ratio : 0;
  const [first, last] = rowsInSight(view, geometry, heightPx);
  const gap = 8 * ratio;
  const room = (44 + rules.tapePx.side) * ratio;
  const step = Math.max(2, stepOf(geometry.rowHeightMm * view.scale, 17 * ratio));
  for (let r = first; r <= last; r++) {
    // Odd rows start on one side and even rows on the other; each side is thinned by itself.
    const isOdd = r % 2 === 0;
    if ((isOdd ? r : r + 1) % step !== 0) continue;
    const y = (rowEdge(view, geometry, r) + rowEdge(view, geometry, r + 1)) / 2;
    if (y < leastY) continue;
    if (goesRight(startCorner, r))
      label(pen, `${r + 1} →`, Math.max(left - gap, room), y, 'right', inks, ratio);
    else label(pen, `← ${r + 1}`, Math.min(right + gap, widthPx - room), y, 'left', inks, ratio);
  }
}

/** 1, 2, 10, 20, 50 …: as many cells between two numbers as keep them apart. */
function stepOf(cellPx: number, leastPx: number): number {
  const steps = [1, 2, 10, 20, 50, 100, 200, 500, 1000];
  return steps.find((step) => step * cellPx >= leastPx) ?? 1000;
}

function label(
  pen: Pen,
  text: string,
  x: number,
  y: number,
  align: CanvasTextAlign,
  { ink, paper }: Pick<Inks, 'ink' | 'paper'>,
  ratio: number,
): void {
  pen.font = `600 ${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = align;
  pen.textBaseline = 'middle';
  pen.lineJoin = 'round';
  pen.lineWidth = 4 * ratio;
  pen.strokeStyle = paper;
  pen.strokeText(text, x, y);
  pen.fillStyle = ink;
  pen.fillText(text, x, y);
}
