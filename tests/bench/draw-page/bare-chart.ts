/**
 * The same picture by bare canvas calls, as directly as it can be done by hand: twelve arrays of bytes for the sheets
 * and one for what is seen of them, one canvas, one bitmap of a pixel a cell, a plain array of tiles where cells have a
 * look, the cells' pictures and the drawing of dowel, cords and rules as the studio has them. No store, no history, no
 * React, no Konva.
 */
import type { Views } from '../../../renderer/store/views.ts';
import { columnsInSight, drawAround, rowsInSight } from '../../../renderer/surface/draw-around.ts';
import { drawAxes } from '../../../renderer/surface/draw-axes.ts';
import { drawRules } from '../../../renderer/surface/draw-rules.ts';
import { looksFromPx } from '../../../renderer/surface/knot-look.ts';
import { type Inks, type Look, lookOf } from '../../../renderer/surface/look.ts';
import { columnEdge, rowEdge, type View } from '../../../renderer/surface/view.ts';
import { goesRight } from '../../../shared/chart/chart.ts';
import { axesOf } from '../../../shared/chart/symmetry/axes.ts';
import { centreOf } from '../../../shared/chart/symmetry/sound-symmetry.ts';
import { noSymmetry, type Symmetry } from '../../../shared/chart/symmetry/symmetry.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { Design } from '../../../shared/design/design.ts';

const tileCells = 50;

export class BareChart {
  readonly canvas: HTMLCanvasElement;
  readonly pen: CanvasRenderingContext2D;
  readonly #design: Design;
  readonly #sheets: Uint8Array[];
  readonly #shown: boolean[];
  readonly #cells: Uint8Array;
  readonly #inks: Inks;
  readonly #bitmap: HTMLCanvasElement;
  readonly #bitmapPen: CanvasRenderingContext2D;
  readonly #pixels: ImageData;
  readonly #look: Look;
  /** No cell of these designs is bare. */
  readonly #bare: Uint8Array;
  #tiles = new Map<number, HTMLCanvasElement>();
  #tilesScale = 0;

  constructor(canvas: HTMLCanvasElement, design: Design, inks: Inks, views: Views) {
    const { columns, rows, layers } = design;
    this.canvas = canvas;
    this.#design = design;
    this.#sheets = layers.map((layer) => {
      const sheet = new Uint8Array(columns * rows);
      for (const [r, row] of layer.rows.entries()) sheet.set(row, r * columns);
      return sheet;
    });
    this.#shown = layers.map(({ visible }) => visible);
    this.#cells = new Uint8Array(columns * rows);
    this.#inks = inks;
    this.#bare = new Uint8Array(columns);
    this.pen = canvas.getContext('2d')!;
    this.#look = lookOf(design, views);
    this.#bitmap = document.createElement('canvas');
    this.#bitmap.width = columns;
    this.#bitmap.height = rows;
    this.#bitmapPen = this.#bitmap.getContext('2d', { willReadFrequently: true })!;
    this.#pixels = this.#bitmapPen.createImageData(columns, rows);
    this.composeAll();
  }

  /** The whole chart anew from its sheets; tiles are forgotten. */
  composeAll(): void {
    const { columns, rows, startCorner } = this.#design;
    const words = new Uint32Array(this.#pixels.data.buffer);
    for (let row = 0; row < rows; row++) {
      const ways = this.#look.words[goesRight(startCorner, row) ? 'right' : 'left'];
      for (let i = row * columns; i < (row + 1) * columns; i++) words[i] = ways[this.#compose(i)]!;
    }
    this.#bitmapPen.putImageData(this.#pixels, 0, 0);
    this.#tiles = new Map();
  }

  toggle(sheet: number): void {
    this.#shown[sheet] = !this.#shown[sheet];
    this.composeAll();
  }

  /** Gives the cells that touch the first one and are of its yarn another yarn, on the uppermost sheet. */
  fill(first: number, code: number): void {
    const { columns, rows } = this.#design;
    const top = this.#sheets.at(-1)!;
    const from = this.#cells[first]!;
    const waiting = [first];
    while (waiting.length > 0) {
      const at = waiting.pop()!;
      if (this.#cells[at] !== from || top[at] === code) continue;
      top[at] = code;
      if (at % columns > 0) waiting.push(at - 1);
      if (at % columns < columns - 1) waiting.push(at + 1);
      if (at >= columns) waiting.push(at - columns);
      if (at < columns * (rows - 1)) waiting.push(at + columns);
    }
    this.composeAll();
  }

  /** Back to the bytes that the uppermost sheet had. */
  putBack(sheet: Uint8Array): void {
    this.#sheets.at(-1)!.set(sheet);
    this.composeAll();
  }

  copyTop(): Uint8Array {
    return this.#sheets.at(-1)!.slice();
  }

  /** Cells of one sheet in another yarn, and their mirror images both ways: the cells that were painted. */
  paintMirrored(sheet: number, cells: readonly Cell[], code: number): Cell[] {
    const { columns, rows } = this.#design;
    const painted: Cell[] = [];
    for (const { row, column } of cells) {
      for (const r of [row, rows - 1 - row]) {
        for (const c of [column, columns - 1 - column]) {
          this.#sheets[sheet]![r * columns + c] = code;
          this.#patch(r, c);
          painted.push({ row: r, column: c });
        }
      }
    }
    return painted;
  }

  /** `zooming`: tiles of the size before are stretched instead of made anew. */
  drawAll(view: View, zooming = false): void {
    const { pen, canvas } = this;
    const { geometry } = this.#look;
    pen.clearRect(0, 0, canvas.width, canvas.height);
    pen.imageSmoothingEnabled = geometry.pitchMm * view.scale < 1;
    drawAround(pen, view, geometry, this.#inks, this.#bare, canvas.width);
    if (this.#hasLooks(view)) this.#drawTiles(view, zooming);
    else this.#drawBitmap(view);
    drawRules(pen, {
      view,
      geometry,
      startCorner: this.#design.startCorner,
      inks: this.#inks,
      widthPx: canvas.width,
      heightPx: canvas.height,
      ratio: 1,
      isZooming: zooming,
      hasTens: true,
      tapePx: { side: 0, top: 0 },
    });
    drawAxes(pen, axesOf(mirrorBoth(this.#design), this.#design), view, geometry, 1);
  }

  /** These cells only, each in its own place on the canvas. */
  drawCells(view: View, cells: readonly Cell[]): void {
    const { geometry } = this.#look;
    for (const { row, column } of cells) {
      const code = this.#cells[row * this.#design.columns + column]!;
      const right = goesRight(this.#design.startCorner, row);
      const [x, y] = [columnEdge(view, geometry, column), rowEdge(view, geometry, row)];
      const width = columnEdge(view, geometry, column + 1) - x;
      const height = rowEdge(view, geometry, row + 1) - y;
      if (this.#hasLooks(view)) this.pen.drawImage(this.#look.cells.of(code, right, width, height), x, y);
      else {
        this.pen.fillStyle = this.#look.colors[right ? 'right' : 'left'][code]!;
        this.pen.fillRect(x, y, width, height);
      }
    }
  }

  #hasLooks(view: View): boolean {
    return this.#look.geometry.pitchMm * view.scale >= looksFromPx[this.#look.view];
  }

  /** What is seen in a cell, by its place in the bytes. */
  #compose(at: number): number {
    let code = 0;
    for (let sheet = this.#sheets.length - 1; sheet >= 0 && code === 0; sheet--)
      if (this.#shown[sheet]) code = this.#sheets[sheet]![at]!;
    this.#cells[at] = code;
    return code;
  }

  /** A cell's pixel in the bitmap, and its picture in the tile that has it. */
  #patch(row: number, column: number): void {
    const code = this.#compose(row * this.#design.columns + column);
    const right = goesRight(this.#design.startCorner, row);
    this.#bitmapPen.fillStyle = this.#look.colors[right ? 'right' : 'left'][code]!;
    this.#bitmapPen.fillRect(column, row, 1, 1);
    const [tileRow, tileColumn] = [Math.floor(row / tileCells), Math.floor(column / tileCells)];
    const tile = this.#tiles.get(tileRow * 1000 + tileColumn);
    if (!tile) return;
    const { geometry } = this.#look;
    const view = { scale: this.#tilesScale, x: 0, y: 0 };
    const [x, y] = [columnEdge(view, geometry, column), rowEdge(view, geometry, row)];
    const width = columnEdge(view, geometry, column + 1) - x;
    const height = rowEdge(view, geometry, row + 1) - y;
    const look = this.#look.cells.of(code, right, width, height);
    const left = columnEdge(view, geometry, tileColumn * tileCells);
    const top = rowEdge(view, geometry, tileRow * tileCells);
    tile.getContext('2d')!.drawImage(look, x - left, y - top);
  }

  #drawBitmap(view: View): void {
    const { geometry } = this.#look;
    const [x, y] = [columnEdge(view, geometry, 0), rowEdge(view, geometry, 0)];
    const right = columnEdge(view, geometry, geometry.columns);
    const bottom = rowEdge(view, geometry, geometry.rows);
    this.pen.drawImage(this.#bitmap, x, y, right - x, bottom - y);
  }

  #drawTiles(view: View, zooming: boolean): void {
    const { geometry } = this.#look;
    if (!zooming && this.#tilesScale !== view.scale) {
      this.#tiles = new Map();
      this.#tilesScale = view.scale;
    }
    const [firstColumn, lastColumn] = columnsInSight(view, geometry, this.canvas.width);
    const [firstRow, lastRow] = rowsInSight(view, geometry, this.canvas.height);
    for (let tr = Math.floor(firstRow / tileCells); tr * tileCells <= lastRow; tr++) {
      for (let tc = Math.floor(firstColumn / tileCells); tc * tileCells <= lastColumn; tc++) {
        const tile = this.#tiles.get(tr * 1000 + tc) ?? this.#makeTile(tr, tc);
        const [x, y] = [columnEdge(view, geometry, tc * tileCells), rowEdge(view, geometry, tr * tileCells)];
        if (!zooming) this.pen.drawImage(tile, x, y);
        else {
          const right = columnEdge(view, geometry, Math.min((tc + 1) * tileCells, geometry.columns));
          const bottom = rowEdge(view, geometry, Math.min((tr + 1) * tileCells, geometry.rows));
          this.pen.drawImage(tile, x, y, right - x, bottom - y);
        }
      }
    }
  }

  #makeTile(tileRow: number, tileColumn: number): HTMLCanvasElement {
    const { geometry } = this.#look;
    const { columns, rows, startCorner } = this.#design;
    const tile = document.createElement('canvas');
    const flat = { scale: this.#tilesScale, x: 0, y: 0 };
    const [left, top] = [tileColumn * tileCells, tileRow * tileCells];
    const [right, bottom] = [Math.min(left + tileCells, columns), Math.min(top + tileCells, rows)];
    const x0 = columnEdge(flat, geometry, left);
    const y0 = rowEdge(flat, geometry, top);
    tile.width = columnEdge(flat, geometry, right) - x0;
    tile.height = rowEdge(flat, geometry, bottom) - y0;
    const pen = tile.getContext('2d')!;
    for (let r = top; r < bottom; r++) {
      for (let c = left; c < right; c++) {
        const [x, y] = [columnEdge(flat, geometry, c), rowEdge(flat, geometry, r)];
        const [w, h] = [columnEdge(flat, geometry, c + 1) - x, rowEdge(flat, geometry, r + 1) - y];
        const code = this.#cells[r * columns + c]!;
        pen.drawImage(this.#look.cells.of(code, goesRight(startCorner, r), w, h), x - x0, y - y0);
      }
    }
    this.#tiles.set(tileRow * 1000 + tileColumn, tile);
    return tile;
  }
}

function mirrorBoth(design: Design): Symmetry {
  return { ...noSymmetry, point: 'mirror-both', centre: centreOf(design) };
}
