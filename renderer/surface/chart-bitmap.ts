/**
 * The whole chart as one bitmap, a pixel a cell, patched where an edit touched. Bare cells are transparent: the cords
 * behind the chart show.
 */
import { type Chart, goesRight } from '../../shared/chart/chart.ts';
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
  patch({ columns, cells, startCorner }: Chart, { right, left }: Ways<Uint32Array>, block: CellBlock): void {
    for (let r = block.top; r <= block.bottom; r++) {
      const words = goesRight(startCorner, r) ? right : left;
      for (let i = r * columns + block.left; i <= r * columns + block.right; i++)
        this.#words[i] = words[cells[i]!]!;
    }
    const [width, height] = [block.right - block.left + 1, block.bottom - block.top + 1];
    this.#pen.putImageData(this.#pixels, 0, 0, block.left, block.top, width, height);
  }
}

/** Something for rows that go right and for rows that go left. */
export interface Ways<T> {
  readonly right: T;
  readonly left: T;
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

/** Changed cells closer together than this make one block. */
const joinedCells = 8;
/** More blocks than this take longer than all the rows in which they lie. */
const mostBlocks = 60;

/**
 * Blocks that hold every cell that differs in the rows touched (from 0, in order), and few others: a mirrored stroke
 * gives one for each of its images, not one that reaches over the whole chart.
 */
export function changedBlocks(before: Chart, after: Chart, touched: readonly number[]): CellBlock[] {
  const blocks: CellBlock[] = [];
  /** Blocks that reach down to the row before, by their place in the list. */
  let growing: number[] = [];
  let rowBefore = -1;
  for (const row of touched) {
    if (row !== rowBefore + 1) growing = [];
    const grown: number[] = [];
    for (const [left, right] of changedStretches(before, after, row)) {
      const at = growing.find(
        (i) => blocks[i]!.left <= right + joinedCells && left <= blocks[i]!.right + joinedCells,
      );
      if (at === undefined) grown.push(blocks.push({ left, right, top: row, bottom: row }) - 1);
      else {
        const old = blocks[at]!;
        const [first, last] = [Math.min(left, old.left), Math.max(right, old.right)];
        blocks[at] = { left: first, right: last, top: old.top, bottom: row };
        if (!grown.includes(at)) grown.push(at);
      }
    }
    if (blocks.length > mostBlocks)
      return [{ left: 0, top: touched[0]!, right: after.columns - 1, bottom: touched.at(-1)! }];
    growing = grown;
    rowBefore = row;
  }
  return blocks;
}

/** First and last column (from 0) of each stretch of a row in which cells differ. */
function changedStretches(before: Chart, after: Chart, row: number): [first: number, last: number][] {
  const stretches: [number, number][] = [];
  const from = row * after.columns;
  for (let c = firstOther(before.cells, after.cells, from, after.columns); c < after.columns; c++) {
    if (before.cells[from + c] === after.cells[from + c]) continue;
    const last = stretches.at(-1);
    if (last && c - last[1] <= joinedCells) last[1] = c;
    else stretches.push([c, c]);
  }
  return stretches;
}

/** About the first column in which two rows of cells differ, at most three before it; four cells are compared at once. */
function firstOther(before: Uint8Array, after: Uint8Array, from: number, columns: number): number {
  if (from % 4 !== 0) return 0;
  const count = columns >> 2;
  const a = new Uint32Array(before.buffer, before.byteOffset + from, count);
  const b = new Uint32Array(after.buffer, after.byteOffset + from, count);
  let i = 0;
  while (i < count && a[i] === b[i]) i++;
  return i * 4;
}
