/**
 * What one cell looks like when it is large enough: a knot as two turns of yarn, one above the other, leaning with
 * the row's direction; or, in the symbols view, a flat square with the yarn's symbol. Drawn once for each size, yarn
 * and direction, and copied from there.
 */

import { darker, lighter } from '../../shared/pattern/tones.ts';
import { inkOn } from '../../shared/yarn/colour-contrast.ts';
import { outline } from '../../shared/yarn/symbols.ts';

export interface CellLook {
  readonly color: string;
  readonly symbol: string;
}

/** From this width on cells are drawn with a look of their own; below it a cell is its colour. */
export const looksFromPx = 5;
/** From this width on symbols can be told apart. */
const symbolsFromPx = 7;
/** 64 yarns in both directions, at four sizes: neighbouring cells differ by a pixel. */
const mostMade = 1024;
/** From this height on a turn of yarn has room for light and shade. */
const shadedFromPx = 11;

/** Pictures of cells by size, code and direction; thrown away as a whole where many zooms have made many. */
export class CellLooks {
  readonly #looks: Readonly<Record<number, CellLook>>;
  readonly #symbols: boolean;
  readonly #made = new Map<string, HTMLCanvasElement>();

  constructor(looks: Readonly<Record<number, CellLook>>, symbols: boolean) {
    this.#looks = looks;
    this.#symbols = symbols;
  }

  /** A picture of the cell, `width` by `height` device pixels. */
  of(code: number, goesRight: boolean, width: number, height: number): HTMLCanvasElement {
    const key = `${code} ${this.#symbols || goesRight} ${width} ${height}`;
    let made = this.#made.get(key);
    if (!made) {
      if (this.#made.size >= mostMade) this.#made.clear();
      made = document.createElement('canvas');
      made.width = width;
      made.height = height;
      const pen = made.getContext('2d')!;
      const look = this.#looks[code] ?? { color: '#000000', symbol: 'a' };
      if (this.#symbols) drawSquare(pen, look, width, height);
      else drawKnot(pen, look.color, goesRight, width, height);
      this.#made.set(key, made);
    }
    return made;
  }
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
    if (height < shadedFromPx) {
      stroke(middle, middle < height / 2 ? lighter(color, 0.05) : color, 1);
      continue;
    }
    // Round yarn lit from above: dark below, light where it bulges towards the eye.
    stroke(middle, darker(color, 0.1), 1);
    stroke(middle - thick * 0.07, color, 0.84);
    stroke(middle - thick * 0.15, lighter(color, 0.08), 0.5);
    stroke(middle - thick * 0.22, lighter(color, 0.18), 0.16, 0.8);
  }
}

function drawSquare(pen: CanvasRenderingContext2D, look: CellLook, width: number, height: number) {
  pen.fillStyle = look.color;
  pen.fillRect(0, 0, width, height);
  pen.fillStyle = darker(look.color, 0.25);
  pen.fillRect(width - 1, 0, 1, height);
  pen.fillRect(0, height - 1, width, 1);
  if (width >= symbolsFromPx) drawSymbol(pen, look, width, height);
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
