/**
 * The chart at sizes where cells have a look: tiles of 50 x 50 cells, drawn once and copied. An edit redraws only the
 * cells it changed. While zooming, tiles of the size before are stretched; when the zoom settles, a new set is made.
 * Tiles that were used longest ago are let go beyond a stated memory.
 */
import { type Chart, goesRight } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { CellBlock } from './chart-bitmap.ts';
import type { CellLooks } from './knot-look.ts';
import { type CellSize, columnEdge, rowEdge, type View } from './view.ts';

export const tileCells = 50;
const mostBytes = 96 * 1024 * 1024;

interface Tile {
  readonly canvas: HTMLCanvasElement;
  readonly pen: CanvasRenderingContext2D;
}

export class TileSet {
  readonly scale: number;
  readonly #view: View;
  readonly #looks: CellLooks;
  readonly #size: CellSize;
  readonly #tiles = new Map<number, Tile>();
  #bytes = 0;

  constructor(scale: number, looks: CellLooks, size: CellSize) {
    this.scale = scale;
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
    const block = blockOfTile(chart, tileRow, tileColumn);
    const canvas = document.createElement('canvas');
    canvas.width = this.#column(block.right + 1) - this.#column(block.left);
    canvas.height = this.#row(block.bottom + 1) - this.#row(block.top);
    const tile = { canvas, pen: canvas.getContext('2d')! };
    this.#drawCells(tile, chart, block, block);
    this.#tiles.set(keyOf(tileRow, tileColumn), tile);
    this.#bytes += canvas.width * canvas.height * 4;
    this.#letGo();
    return canvas;
  }

  /** Redraws the cells of a block in the tiles that were made. */
  patch(chart: Chart, block: CellBlock): void {
    for (let tr = Math.floor(block.top / tileCells); tr <= Math.floor(block.bottom / tileCells); tr++) {
      for (let tc = Math.floor(block.left / tileCells); tc <= Math.floor(block.right / tileCells); tc++) {
        const tile = this.#tiles.get(keyOf(tr, tc));
        if (!tile) continue;
        const whole = blockOfTile(chart, tr, tc);
        this.#drawCells(tile, chart, whole, {
          left: Math.max(block.left, whole.left),
          top: Math.max(block.top, whole.top),
          right: Math.min(block.right, whole.right),
          bottom: Math.min(block.bottom, whole.bottom),
        });
      }
    }
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
    for (const [key, { canvas }] of this.#tiles) {
      if (this.#bytes <= mostBytes || this.#tiles.size <= 1) return;
      this.#tiles.delete(key);
      this.#bytes -= canvas.width * canvas.height * 4;
    }
  }

  #column(column: number): number {
    return columnEdge(this.#view, this.#size, column);
  }

  #row(row: number): number {
    return rowEdge(this.#view, this.#size, row);
  }
}

/** The cells of a tile, up to the chart's edge. */
export function blockOfTile({ columns, rows }: Chart, tileRow: number, tileColumn: number): CellBlock {
  return {
    left: tileColumn * tileCells,
    top: tileRow * tileCells,
    right: Math.min((tileColumn + 1) * tileCells, columns) - 1,
    bottom: Math.min((tileRow + 1) * tileCells, rows) - 1,
  };
}

function keyOf(tileRow: number, tileColumn: number): number {
  return tileRow * 100_000 + tileColumn;
}
