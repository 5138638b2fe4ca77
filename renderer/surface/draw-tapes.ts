/**
 * Tape measures laid along the dowel and down both sides, from the first cord and the first row. They lie at the edge
 * of the screen where what they measure begins beyond it.
 */
import type { HangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import type { Units } from '../../shared/units/units.ts';
import { chartEdges } from './draw-around.ts';
import type { Inks } from './look.ts';
import type { Placed } from './placed.ts';
import { type TapeUnit, tapeMarks, tapeUnits } from './tape.ts';

type Pen = CanvasRenderingContext2D;

/** How wide a tape is, in CSS pixels; those at the sides have room for a figure beside their marks. */
export const tapePx = { side: 34, top: 22 };

/** From numbers at the sides to the tapes beyond them, in CSS pixels. */
const besideNumbersPx = 54;

export function drawTapes(
  pen: Pen,
  placed: Placed,
  geometry: HangingGeometry,
  inks: Inks,
  units: Units,
): void {
  const { view, widthPx, heightPx, ratio } = placed;
  const { left, right, top } = chartEdges(view, geometry);
  const { first, second } = tapeUnits(units);
  const [wide, high] = [tapePx.side * ratio, tapePx.top * ratio];
  const dowelTop = view.y + geometry.dowel.y * view.scale;
  const tape = { pen, inks, ratio, scale: view.scale };
  // Above the dowel; at the screen's upper edge where the dowel is not in sight.
  const above = Math.max(0, dowelTop - high - 20 * ratio);
  const down = { fromPx: top, toMm: geometry.bounds.bottom, screenPx: heightPx };
  const across = { fromPx: left, toMm: geometry.widthMm, screenPx: widthPx };
  const leftX = Math.max(0, left - besideNumbersPx * ratio - wide);
  const rightX = Math.min(widthPx - wide, right + besideNumbersPx * ratio);
  drawTape({ ...tape, ...down, unit: first, atPx: leftX, isUpright: true, marksAt: 'end' });
  drawTape({ ...tape, ...down, unit: second, atPx: rightX, isUpright: true, marksAt: 'start' });
  drawTape({ ...tape, ...across, unit: first, atPx: above, isUpright: false, marksAt: 'end' });
  if (first !== second)
    drawTape({
      ...tape,
      ...across,
      unit: second,
      atPx: above === 0 ? high : Math.max(0, above - high),
      isUpright: false,
      marksAt: 'end',
    });
}

interface Tape {
  readonly pen: Pen;
  readonly inks: Inks;
  readonly ratio: number;
  readonly scale: number;
  readonly unit: TapeUnit;
  readonly isUpright: boolean;
  /** Its near edge on the screen, across its length. */
  readonly atPx: number;
  /** Where its zero is, along its length. */
  readonly fromPx: number;
  readonly toMm: number;
  readonly screenPx: number;
  /** The edge at which its marks stand. */
  readonly marksAt: 'start' | 'end';
}

function drawTape({ pen, inks, ratio, scale, unit, isUpright, atPx, fromPx, toMm, screenPx, marksAt }: Tape) {
  const wide = (isUpright ? tapePx.side : tapePx.top) * ratio;
  pen.save();
  // One drawing for both ways: an upright tape is a level one with its axes exchanged.
  if (isUpright) pen.transform(0, 1, 1, 0, atPx, 0);
  else pen.translate(0, atPx);
  const start = Math.max(0, fromPx - 6 * ratio);
  const end = Math.min(screenPx, fromPx + toMm * scale + 6 * ratio);
  pen.fillStyle = inks.paper;
  pen.globalAlpha = 0.92;
  pen.fillRect(start, 0, end - start, wide);
  pen.globalAlpha = 1;
  pen.fillStyle = inks.ink;
  const edge = marksAt === 'end' ? wide : 0;
  const line = Math.max(1, Math.round(ratio));
  pen.fillRect(start, marksAt === 'end' ? wide - line : 0, end - start, line);
  pen.font = `${11 * ratio}px "Noto Sans", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  for (const mark of tapeMarks(unit, toMm, scale, { leastPx: 5 * ratio, leastTextPx: 34 * ratio })) {
    const along = Math.round(fromPx + mark.mm * scale);
    if (along < 0 || along > screenPx) continue;
    const length = (3 + 4 * mark.length) * ratio;
    pen.fillRect(along, marksAt === 'end' ? edge - length : 0, line, length);
    if (!mark.text) continue;
    const text = mark.mm === 0 ? `0 ${unit}` : mark.text;
    const across = marksAt === 'end' ? (wide - 7 * ratio) / 2 : wide - (wide - 7 * ratio) / 2;
    writeAlong(pen, text, along, across, isUpright);
  }
  pen.restore();
}

/** Exchanged axes would write a mirrored figure, so there they are exchanged back; figures stay upright. */
function writeAlong(pen: Pen, text: string, along: number, across: number, isUpright: boolean): void {
  if (!isUpright) {
    pen.fillText(text, along, across);
    return;
  }
  pen.save();
  pen.transform(0, 1, 1, 0, 0, 0);
  pen.fillText(text, across, along);
  pen.restore();
}
