/**
 * The chart at sizes where cells have a look: tiles of at most 50 x 50 cells, drawn once and copied. An edit redraws
 * only the cells it changed. While zooming, tiles of the size before are stretched; when the zoom settles, a new set is
 * made. Tiles that were used longest ago are let go beyond a stated memory, which holds more than one screen.
 */
import { type Chart, goesRight } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { CellBlock } from './chart-bitmap.ts';
import type { CellLooks } from './knot-look.ts';
import { type CellSize, columnEdge, rowEdge, type View } from './view.ts';

const mostCells = 50;
/** Small cells make tiles of at least this many pixels a side, so that few of them fill a screen. */
const fairPx = 400;
/** Large cells make smaller tiles, so that little of a tile lies beside the screen, where it is made in vain. */
const mostPx = 512;
const mostBytes = 128 * 1024 * 1024;
/** To patch more cells than this one by one takes longer than to make the tile anew. */
const mostPatched = 400;

interface Tile {
  readonly canvas: HTMLCanvasElement;
  readonly pen: CanvasRenderingContext2D;
}

export class TileSet {
  readonly scale: number;
  readonly #cells: number;
  readonly #view: View;
  readonly #looks: CellLooks;
  readonly #size: CellSize;
  readonly #tiles = new Map<number, Tile>();
  #bytes = 0;
  #pixels: ImageData | null = null;

  constructor(scale: number, looks: CellLooks, size: CellSize) {
    this.scale = scale;
    const cellPx = size.pitchMm * scale;
    const most = Math.max(mostCells, Math.ceil(fairPx / cellPx));
    this.#cells = Math.max(1, Math.min(most, Math.floor(mostPx / cellPx)));
    this.#view = { scale, x: 0, y: 0 };
    this.#looks = looks;
    this.#size = size;
  }

  /** The tile if it was made before. */
  have(tileRow: number, tileColumn: number): HTMLCanvasElement | null {
    const key = keyOf(tileRow, tileColumn);
    const tile = this.#tiles.get(key);
    if (!tile) return null;
    // Put last: maps keep the order, so the first one is always the one used longest ago.
    this.#tiles.delete(key);
    this.#tiles.set(key, tile);
    return tile.canvas;
  }

  make(chart: Chart, tileRow: number, tileColumn: number): HTMLCanvasElement {
    const block = this.cellsOf(chart, tileRow, tileColumn);
    const canvas = document.createElement('canvas');
    canvas.width = this.#column(block.right + 1) - this.#column(block.left);
    canvas.height = this.#row(block.bottom + 1) - this.#row(block.top);
    const tile = { canvas, pen: canvas.getContext('2d')! };
    this.#drawWhole(tile, chart, block);
    this.#tiles.set(keyOf(tileRow, tileColumn), tile);
    this.#bytes += canvas.width * canvas.height * 4;
    this.#letGo();
    return canvas;
  }

  /** The tiles in which cells of a block lie, by row and column of the grid that tiles form, from 0. */
  tilesOf({ left, top, right, bottom }: CellBlock): [tileRow: number, tileColumn: number][] {
    const tile = (cell: number) => Math.floor(cell / this.#cells);
    const tiles: [number, number][] = [];
    for (let tr = tile(top); tr <= tile(bottom); tr++) {
      for (let tc = tile(left); tc <= tile(right); tc++) tiles.push([tr, tc]);
    }
    return tiles;
  }

  /** The cells of a tile, up to the chart's edge. */
  cellsOf({ columns, rows }: Chart, tileRow: number, tileColumn: number): CellBlock {
    return {
      left: tileColumn * this.#cells,
      top: tileRow * this.#cells,
      right: Math.min((tileColumn + 1) * this.#cells, columns) - 1,
      bottom: Math.min((tileRow + 1) * this.#cells, rows) - 1,
    };
  }

  /** Redraws the cells of a block in the tiles that were made. Of large blocks the tiles are made anew when seen. */
  patch(chart: Chart, block: CellBlock): void {
    for (const [tileRow, tileColumn] of this.tilesOf(block)) {
      const key = keyOf(tileRow, tileColumn);
      const tile = this.#tiles.get(key);
      if (!tile) continue;
      const whole = this.cellsOf(chart, tileRow, tileColumn);
      const part = {
        left: Math.max(block.left, whole.left),
        top: Math.max(block.top, whole.top),
        right: Math.min(block.right, whole.right),
        bottom: Math.min(block.bottom, whole.bottom),
      };
      if (cellsIn(part) <= mostPatched) this.#drawCells(tile, chart, whole, part);
      else this.#forget(key, tile);
    }
  }

  /** All at once as pixels: far quicker than cell by cell, but only where all of a tile is drawn. */
  #drawWhole({ canvas, pen }: Tile, { columns, cells, startCorner }: Chart, block: CellBlock): void {
    const pixels = this.#pixelsOf(canvas.width, canvas.height);
    const words = new Uint32Array(pixels.data.buffer);
    const top = this.#row(block.top);
    const left = this.#column(block.left);
    const edges = Array.from(
      { length: block.right - block.left + 2 },
      (_, i) => this.#column(block.left + i) - left,
    );
    /** Cells of one code differ in direction, and by a pixel in width and in height: eight looks for each code. */
    const looks: (Uint32Array | undefined)[] = [];
    for (let r = block.top; r <= block.bottom; r++) {
      const right = goesRight(startCorner, r);
      const y = this.#row(r) - top;
      const height = this.#row(r + 1) - top - y;
      for (let c = block.left; c <= block.right; c++) {
        const code = cells[r * columns + c]!;
        const x = edges[c - block.left]!;
        const width = edges[c - block.left + 1]! - x;
        const key = code * 8 + (right ? 4 : 0) + (width & 1) * 2 + (height & 1);
        looks[key] ??=
          code === BARE ? new Uint32Array(width * height) : this.#looks.words(code, right, width, height);
        copyWords(looks[key], width, height, words, y * canvas.width + x, canvas.width);
      }
    }
    pen.putImageData(pixels, 0, 0);
  }

  /** Of the tile before, where that was as large: all of it is written anew. */
  #pixelsOf(width: number, height: number): ImageData {
    if (this.#pixels?.width !== width || this.#pixels.height !== height)
      this.#pixels = new ImageData(width, height);
    return this.#pixels;
  }

  #drawCells({ pen }: Tile, chart: Chart, whole: CellBlock, block: CellBlock): void {
    const left = this.#column(whole.left);
    const top = this.#row(whole.top);
    for (let r = block.top; r <= block.bottom; r++) {
      const right = goesRight(chart.startCorner, r);
      const y = this.#row(r) - top;
      const height = this.#row(r + 1) - top - y;
      for (let c = block.left; c <= block.right; c++) {
        const code = chart.cells[r * chart.columns + c]!;
        const x = this.#column(c) - left;
        const width = this.#column(c + 1) - left - x;
        if (code === BARE) pen.clearRect(x, y, width, height);
        else pen.drawImage(this.#looks.of(code, right, width, height), x, y);
      }
    }
  }

  #letGo(): void {
    for (const [key, tile] of this.#tiles) {
      if (this.#bytes <= mostBytes || this.#tiles.size <= 1) return;
      this.#forget(key, tile);
    }
  }

  #forget(key: number, { canvas }: Tile): void {
    this.#tiles.delete(key);
    this.#bytes -= canvas.width * canvas.height * 4;
  }

  #column(column: number): number {
    return columnEdge(this.#view, this.#size, column);
  }

  #row(row: number): number {
    return rowEdge(this.#view, this.#size, row);
  }
}

function keyOf(tileRow: number, tileColumn: number): number {
  return tileRow * 100_000 + tileColumn;
}

function cellsIn({ left, top, right, bottom }: CellBlock): number {
  return (right - left + 1) * (bottom - top + 1);
}

function copyWords(
  from: Uint32Array,
  width: number,
  height: number,
  to: Uint32Array,
  at: number,
  toWidth: number,
): void {
  // Of few pixels a loop is quicker than a view and a copy.
  let source = 0;
  for (let line = at; line < at + height * toWidth; line += toWidth) {
    if (width < 32) for (let x = 0; x < width; x++) to[line + x] = from[source + x]!;
    else to.set(from.subarray(source, source + width), line);
    source += width;
  }
}
