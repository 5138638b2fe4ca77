/**
 * What cells send to the eye from across the room, pixel by pixel: the light of all that lies within a pixel is added
 * up. The screen's own way to make pictures smaller adds up sRGB bytes instead, which makes fine patterns of light and
 * dark too dark: from afar they would show other colours than the hanging has.
 *
 * How far away: an eye tells points apart that lie an arc minute from one another, 0.87 mm at 3 m, and no eye is asked
 * to do otherwise here. The hanging is shown as large as it looks: 3 m away it is a fifth of its size on a screen at
 * an arm's length, 60 cm. So it falls on the person's own eye as the hanging will, and nothing needs to be blurred.
 */
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import { byteOfLight } from './linear-light.ts';

/** From the eyes to the screen. */
const screenAwayMm = 600;
/** From the eyes to the hanging, where the distance view begins. */
export const acrossRoomMm = 3000;
/** CSS says that 96 of its pixels are an inch. */
export const cssPxPerMm = 96 / 25.4;

/** How large a mm of the hanging is on the screen, in CSS pixels, where it hangs so far away. */
export function scaleFrom(awayMm: number): number {
  return (cssPxPerMm * screenAwayMm) / awayMm;
}

/** How far away the hanging looks where a mm of it is so many CSS pixels. */
export function awayMmAt(scale: number): number {
  return (cssPxPerMm * screenAwayMm) / scale;
}

/** A part of the screen, and how cells lie in it; all in device pixels from the part's left upper corner. */
export interface Pane {
  readonly width: number;
  readonly height: number;
  readonly x: number;
  readonly y: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
}

type Light = readonly [red: number, green: number, blue: number];

/** RGBA bytes of the pane. `lights` has the light of each code; where cells are bare, and beside the chart, nothing. */
export function picturedFromAfar(
  { columns, rows, cells }: Chart,
  lights: Readonly<Record<number, Light>>,
  pane: Pane,
): Uint8ClampedArray<ArrayBuffer> {
  const { width, height, x, y, cellWidth, cellHeight } = pane;
  const table = lightTable(lights);
  const sums = new Float32Array(width * height * 4);
  const line = new Float32Array(width * 4);
  const [firstRow, lastRow] = within(y, cellHeight, height, rows);
  const [firstColumn, lastColumn] = within(x, cellWidth, width, columns);
  for (let row = firstRow; row <= lastRow; row++) {
    line.fill(0);
    for (let column = firstColumn; column <= lastColumn; column++) {
      const code = cells[row * columns + column]! * 4;
      const from = Math.max(0, x + column * cellWidth);
      const to = Math.min(width, x + (column + 1) * cellWidth);
      for (let px = Math.floor(from); px < to; px++)
        add(line, px * 4, table, code, 1, Math.min(px + 1, to) - Math.max(px, from));
    }
    const from = Math.max(0, y + row * cellHeight);
    const to = Math.min(height, y + (row + 1) * cellHeight);
    for (let py = Math.floor(from); py < to; py++)
      add(sums, py * width * 4, line, 0, width, Math.min(py + 1, to) - Math.max(py, from));
  }
  return bytesOf(sums);
}

/** Adds `count` points of four channels to others, with a weight. */
function add(
  to: Float32Array,
  at: number,
  from: Float32Array,
  fromAt: number,
  count: number,
  weight: number,
) {
  for (let i = 0; i < count * 4; i++) to[at + i] = to[at + i]! + from[fromAt + i]! * weight;
}

/** For each code red, green, blue, and 1 for a cell that covers what is behind it. */
function lightTable(lights: Readonly<Record<number, Light>>): Float32Array {
  const table = new Float32Array(256 * 4);
  for (const [code, light] of Object.entries(lights)) table.set([...light, 1], Number(code) * 4);
  return table.fill(0, BARE * 4);
}

/** The first and last cell (from 0) of which any lies in the pane. */
function within(start: number, size: number, paneSize: number, count: number): [number, number] {
  return [
    Math.max(0, Math.floor(-start / size)),
    Math.min(count - 1, Math.ceil((paneSize - start) / size) - 1),
  ];
}

function bytesOf(sums: Float32Array): Uint8ClampedArray<ArrayBuffer> {
  const bytes = new Uint8ClampedArray(sums.length);
  for (let i = 0; i < sums.length; i += 4) {
    const cover = sums[i + 3]!;
    if (cover <= 0) continue;
    for (let channel = 0; channel < 3; channel++)
      bytes[i + channel] = byteOfLight(Math.min(1, sums[i + channel]! / cover));
    bytes[i + 3] = Math.round(cover * 255);
  }
  return bytes;
}
