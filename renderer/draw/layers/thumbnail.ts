/**
 * A layer's cells as a small picture. Each of its pixels shows the mean colour of the cells under it, and is the more
 * transparent the more of them are empty. Only pixels whose rows changed are reckoned anew, so that a stroke on a
 * large chart costs next to nothing.
 */

import { COTTON } from '../../../shared/chart/hanging/cotton.ts';
import { BARE, codeOf, EMPTY } from '../../../shared/design/codes.ts';
import type { Yarn } from '../../../shared/design/schema.ts';

export interface Thumbnail {
  /** Four bytes a pixel: red, green, blue, opacity. */
  readonly pixels: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** For each code its colour as a number, 0xrrggbb. */
export function thumbnailColors(yarns: readonly Pick<Yarn, 'id' | 'color'>[]): Uint32Array {
  const colors = new Uint32Array(256);
  const put = (code: number, color: string) => {
    colors[code] = Number.parseInt(color.slice(1), 16);
  };
  for (const { id, color } of yarns) put(codeOf(id), color);
  put(BARE, COTTON);
  return colors;
}

/**
 * Draws `rows` into the thumbnail, which has at most as many pixels a side as there are cells. `before` are the rows
 * that it shows already, in the same colours; null where it shows none.
 */
export function drawThumbnail(
  { pixels, width, height }: Thumbnail,
  rows: readonly Uint8Array[],
  colors: Uint32Array,
  before: readonly Uint8Array[] | null,
): void {
  const columns = rows[0]!.length;
  for (let y = 0; y < height; y++) {
    const top = Math.floor((y * rows.length) / height);
    const bottom = Math.floor(((y + 1) * rows.length) / height);
    if (before && isShown(rows, before, top, bottom)) continue;
    for (let x = 0; x < width; x++) {
      const left = Math.floor((x * columns) / width);
      const right = Math.floor(((x + 1) * columns) / width);
      drawPixel(pixels, (y * width + x) * 4, rows, colors, { top, bottom, left, right });
    }
  }
}

/** Cells from `top`, `left` up to, not including, `bottom`, `right`. */
interface Under {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

function drawPixel(
  pixels: Uint8ClampedArray,
  at: number,
  rows: readonly Uint8Array[],
  colors: Uint32Array,
  { top, bottom, left, right }: Under,
): void {
  let [red, green, blue, full] = [0, 0, 0, 0];
  for (let r = top; r < bottom; r++) {
    const row = rows[r]!;
    for (let c = left; c < right; c++) {
      const code = row[c]!;
      if (code === EMPTY) continue;
      const color = colors[code]!;
      red += color >> 16;
      green += (color >> 8) & 255;
      blue += color & 255;
      full++;
    }
  }
  const share = full / ((bottom - top) * (right - left));
  pixels[at] = red / full;
  pixels[at + 1] = green / full;
  pixels[at + 2] = blue / full;
  // The root, so that a line one cell wide is still seen where many cells share a pixel.
  pixels[at + 3] = 255 * Math.sqrt(share);
}

function isShown(
  rows: readonly Uint8Array[],
  before: readonly Uint8Array[],
  top: number,
  bottom: number,
): boolean {
  for (let r = top; r < bottom; r++) if (rows[r] !== before[r]) return false;
  return true;
}
