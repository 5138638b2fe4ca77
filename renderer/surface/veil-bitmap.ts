/**
 * A veil of paper over the chart, a pixel a cell, patched where an edit touched: over cells that are not of the layer
 * drawn on (`fade`), and over all that is not marked.
 */
import type { Design } from '../../shared/design/design.ts';
import { cellsFromLayer } from './from-layer.ts';

export interface Veil {
  /** The layer that stands out; null where none does. */
  readonly layer: string | null;
  /** A byte a cell, 1 where it is marked; null where nothing is. */
  readonly marked: Uint8Array | null;
  /** As #rrggbb. */
  readonly paper: string;
}

/** Of 255: what lies below is still told apart, what is not veiled stands out. */
const fadedCover = 150;
const unmarkedCover = 140;

export class VeilBitmap {
  readonly canvas = document.createElement('canvas');
  readonly #veil: Veil;
  readonly #pen: CanvasRenderingContext2D;
  readonly #pixels: ImageData;

  constructor(design: Design, veil: Veil) {
    const { columns, rows } = design;
    this.#veil = veil;
    this.canvas.width = columns;
    this.canvas.height = rows;
    this.#pen = this.canvas.getContext('2d', { willReadFrequently: true })!;
    this.#pixels = this.#pen.createImageData(columns, rows);
    this.patch(
      design,
      Array.from({ length: rows }, (_, row) => row),
    );
  }

  /** Patches some rows (from 0, in order). */
  patch(design: Design, rows: readonly number[]): void {
    const words = new Uint32Array(this.#pixels.data.buffer);
    const { layer, marked, paper } = this.#veil;
    const rgb = Number.parseInt(paper.slice(1), 16);
    const swapped = ((rgb & 255) << 16) | (rgb & 0xff00) | (rgb >> 16);
    for (const row of rows) {
      const isOwn = layer === null ? null : cellsFromLayer(design, layer, row);
      for (let column = 0; column < design.columns; column++) {
        const at = row * design.columns + column;
        const faded = isOwn && !isOwn[column] ? fadedCover : 0;
        const unmarked = marked && marked[at] !== 1 ? unmarkedCover : 0;
        words[at] = ((Math.max(faded, unmarked) << 24) | swapped) >>> 0;
      }
    }
    const [first, last] = [rows[0]!, rows.at(-1)!];
    this.#pen.putImageData(this.#pixels, 0, 0, 0, first, design.columns, last - first + 1);
  }
}
