/**
 * The whole chart as one bitmap, a pixel a cell, patched where an edit touched. Bare cells are transparent: the cords
 * behind the chart show.
 */
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';

export class ChartBitmap {
  readonly canvas: HTMLCanvasElement;
  readonly #pen: CanvasRenderingContext2D;
  readonly #pixels: ImageData;
  readonly #words: Uint32Array;

  constructor(columns: number, rows: number) {
    this.canvas = document.createElement('canvas');
    this.canvas.width = columns;
    this.canvas.height = rows;
    // Patched and drawn again and again: kept in memory that the processor reaches at once.
    this.#pen = this.canvas.getContext('2d', { willReadFrequently: true })!;
    this.#pixels = this.#pen.createImageData(columns, rows);
    this.#words = new Uint32Array(this.#pixels.data.buffer);
  }

  /** Patches a block of cells (from 0, last ones included). `words` are pixels by code, see `pixelWords`. */
  patch({ columns, cells }: Chart, words: Uint32Array, block: CellBlock): void {
    for (let r = block.top; r <= block.bottom; r++) {
      for (let i = r * columns + block.left; i <= r * columns + block.right; i++)
        this.#words[i] = words[cells[i]!]!;
    }
    const { left, top, right, bottom } = block;
    this.#pen.putImageData(this.#pixels, 0, 0, left, top, right - left + 1, bottom - top + 1);
  }
}

/** Cells from `left`, `top` to `right`, `bottom`, all included, from 0. */
export interface CellBlock {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** For each code its pixel as one word; little-endian, as every platform of ours is. */
export function pixelWords(colors: Readonly<Record<number, string>>): Uint32Array {
  const words = new Uint32Array(256);
  for (const [code, color] of Object.entries(colors)) {
    const rgb = Number.parseInt(color.slice(1), 16);
    const swapped = ((rgb & 255) << 16) | (rgb & 0xff00) | (rgb >> 16);
    words[Number(code)] = (0xff000000 | swapped) >>> 0;
  }
  words[BARE] = 0;
  return words;
}

/** The smallest block that holds every cell that differs in the rows touched; null where none does. */
export function changedBlock(
  before: Chart,
  after: Chart,
  touched: { readonly first: number; readonly last: number },
): CellBlock | null {
  const { columns } = after;
  let [left, top, right, bottom] = [columns, -1, -1, -1];
  for (let r = touched.first; r <= touched.last; r++) {
    for (let c = 0; c < columns; c++) {
      const i = r * columns + c;
      if (before.cells[i] === after.cells[i]) continue;
      if (top === -1) top = r;
      bottom = r;
      if (c < left) left = c;
      if (c > right) right = c;
    }
  }
  return top === -1 ? null : { left, top, right, bottom };
}
