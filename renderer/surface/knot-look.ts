/**
 * What one cell looks like when it is large enough: a knot as two turns of yarn, one above the other, leaning with
 * the row's direction; a flat square; or a flat square with the yarn's symbol. Drawn once for each size, yarn and
 * direction, and copied from there. Knots of a few pixels are drawn larger and thinned by their light, and the smallest
 * become ribs with a shadow, so that rows and cords still show.
 */

import { darker, lighter } from '../../shared/pattern/page/tones.ts';
import { inkOn } from '../../shared/yarn/colour-contrast.ts';
import { outline } from '../../shared/yarn/symbols.ts';
import type { CellView } from '../store/views.ts';
import { byteOfLight, meanLight, thinned } from './linear-light.ts';

export interface CellLook {
  readonly color: string;
  readonly symbol: string;
}

/** From this width on cells are drawn with a look of their own; below it a cell is its colour. */
export const looksFromPx: Record<CellView, number> = { knots: 2, flat: 8, symbols: 5 };
/** From this width on symbols can be told apart, in device pixels. */
export const symbolsFromPx = 7;
/** 64 yarns in both directions, at four sizes: neighbouring cells differ by a pixel. */
const mostMade = 1024;
/** Below this height a knot is drawn larger and thinned: its light and shade would fall between the pixels. */
const shadedFromPx = 11;
/** Below this height even that would leave nothing of its turns. */
const thinnedFromPx = 5;

interface Made {
  readonly canvas: HTMLCanvasElement;
  /** Its pixels as words; read when they are first asked for. */
  words: Uint32Array | null;
}

/** Pictures of cells by size, code and direction; thrown away as a whole where many zooms have made many. */
export class CellLooks {
  readonly #looks: Readonly<Record<number, CellLook>>;
  readonly #view: CellView;
  readonly #made = new Map<number, Made>();

  constructor(looks: Readonly<Record<number, CellLook>>, view: CellView) {
    this.#looks = looks;
    this.#view = view;
  }

  /** A picture of the cell, `width` by `height` device pixels, for a canvas. */
  of(code: number, goesRight: boolean, width: number, height: number): HTMLCanvasElement {
    return this.#of(code, goesRight, width, height).canvas;
  }

  /** The same as pixels, row by row. */
  words(code: number, goesRight: boolean, width: number, height: number): Uint32Array {
    const made = this.#of(code, goesRight, width, height);
    if (!made.words) {
      const pixels = made.canvas.getContext('2d')!.getImageData(0, 0, width, height);
      made.words = new Uint32Array(pixels.data.buffer);
    }
    return made.words;
  }

  /** The light that comes from one cell as a whole, where it is too far away to see what is in it. */
  lightOf(code: number): [red: number, green: number, blue: number] {
    const size = shadedFromPx * 2;
    const { data } = this.of(code, true, size, size).getContext('2d')!.getImageData(0, 0, size, size);
    return meanLight(data, size, { left: 0, top: 0, width: size, height: size });
  }

  #of(code: number, goesRight: boolean, width: number, height: number): Made {
    const leans = this.#view === 'knots' && goesRight;
    // A word of 8 bits for the code, one for the direction, and 11 for each side.
    const key = ((code * 2 + (leans ? 1 : 0)) * 2048 + width) * 2048 + height;
    let made = this.#made.get(key);
    if (!made) {
      if (this.#made.size >= mostMade) this.#made.clear();
      const look = this.#looks[code] ?? { color: '#000000', symbol: 'a' };
      made = { canvas: picture(look, this.#view, goesRight, width, height), words: null };
      this.#made.set(key, made);
    }
    return made;
  }
}

function picture(
  look: CellLook,
  view: CellView,
  goesRight: boolean,
  width: number,
  height: number,
): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  if (view !== 'knots') drawSquare(pen, look, view === 'symbols', width, height);
  else if (height >= shadedFromPx) drawKnot(pen, look.color, goesRight, width, height);
  else {
    const small = height >= thinnedFromPx ? thinnedKnot : ribbedKnot;
    const pixels = pen.createImageData(width, height);
    pixels.data.set(small(look.color, goesRight, width, height));
    pen.putImageData(pixels, 0, 0);
  }
  return canvas;
}

/** A knot drawn larger, each pixel with the mean light of what lies in it. */
function thinnedKnot(color: string, goesRight: boolean, width: number, height: number): Uint8ClampedArray {
  const by = Math.ceil((2 * shadedFromPx) / height);
  return thinned(largeKnot(color, goesRight, width * by, height * by), width * by, height * by, by);
}

/**
 * A knot of so few pixels that its two turns can't be told apart: a rib with its shadow below, darkest at the side to
 * which the row goes. Neighbouring cells differ by a pixel in size, so what a shadow takes is given to the other pixels:
 * all send the same light to the eye as a large knot, and no plaid appears.
 */
function ribbedKnot(color: string, goesRight: boolean, width: number, height: number): Uint8ClampedArray {
  const size = 2 * shadedFromPx;
  const whole = { left: 0, top: 0, width: size, height: size };
  const light = meanLight(largeKnot(color, goesRight, size, size), size, whole);
  const bytes = new Uint8ClampedArray(width * height * 4).fill(255);
  const darkColumn = goesRight ? width - 1 : 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const down = shadow(y === height - 1, height, 0.26);
      const across = shadow(x === darkColumn, width, 0.12);
      for (let channel = 0; channel < 3; channel++)
        bytes[(y * width + x) * 4 + channel] = byteOfLight(Math.min(1, light[channel]! * down * across));
    }
  }
  return bytes;
}

/** The share of light in one of `count` lines of pixels of which one is dark; their mean is 1. */
function shadow(isDark: boolean, count: number, depth: number): number {
  if (count === 1) return 1;
  return isDark ? 1 - depth : 1 + depth / (count - 1);
}

function largeKnot(color: string, goesRight: boolean, width: number, height: number): Uint8ClampedArray {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d', { willReadFrequently: true })!;
  drawKnot(pen, color, goesRight, width, height);
  return pen.getImageData(0, 0, width, height).data;
}

function drawKnot(
  pen: CanvasRenderingContext2D,
  color: string,
  goesRight: boolean,
  width: number,
  height: number,
) {
  pen.fillStyle = darker(color, 0.24);
  pen.fillRect(0, 0, width, height);
  const lean = (goesRight ? -1 : 1) * height * 0.06;
  pen.lineCap = 'round';
  const thick = Math.min(height * 0.48, width * 0.8);
  const stroke = (y: number, tone: string, share: number, length = 1) => {
    const reach = Math.max(((width - thick) / 2) * length, 0.01);
    pen.strokeStyle = tone;
    pen.lineWidth = thick * share;
    pen.beginPath();
    pen.moveTo(width / 2 - reach, y - lean);
    pen.lineTo(width / 2 + reach, y + lean);
    pen.stroke();
  };
  for (const middle of [height * 0.26, height * 0.76]) {
    // Round yarn lit from above: dark below, light where it bulges towards the eye.
    stroke(middle, darker(color, 0.1), 1);
    stroke(middle - thick * 0.07, color, 0.84);
    stroke(middle - thick * 0.15, lighter(color, 0.08), 0.5);
    stroke(middle - thick * 0.22, lighter(color, 0.18), 0.16, 0.8);
  }
}

function drawSquare(
  pen: CanvasRenderingContext2D,
  look: CellLook,
  symbol: boolean,
  width: number,
  height: number,
) {
  pen.fillStyle = look.color;
  pen.fillRect(0, 0, width, height);
  pen.fillStyle = darker(look.color, 0.25);
  pen.fillRect(width - 1, 0, 1, height);
  pen.fillRect(0, height - 1, width, 1);
  if (symbol && width >= symbolsFromPx) drawSymbol(pen, look, width, height);
}

/** The yarn's symbol, filling a box. */
export function drawSymbol(
  pen: CanvasRenderingContext2D,
  look: CellLook,
  width: number,
  height: number,
): void {
  pen.fillStyle = inkOn(look.color);
  pen.beginPath();
  for (const step of outline(look.symbol)) {
    const at = (i: number) => (step[i] as number) * (i % 2 === 1 ? width : height);
    switch (step[0]) {
      case 'M':
        pen.moveTo(at(1), at(2));
        break;
      case 'L':
        pen.lineTo(at(1), at(2));
        break;
      case 'C':
        pen.bezierCurveTo(at(1), at(2), at(3), at(4), at(5), at(6));
        break;
      case 'Z':
        pen.closePath();
        break;
    }
  }
  pen.fill();
}
