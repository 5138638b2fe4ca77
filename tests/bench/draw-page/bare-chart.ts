/**
 * The same picture by bare canvas calls, as directly as it can be done by hand: one canvas, one bitmap of a pixel a
 * cell, a plain array of tiles where cells have a look, the cells' pictures and the drawing of dowel, cords and rules
 * as the studio has them. No store, no history, no layers, no React, no Konva.
 */

import type { Views } from '../../../renderer/store/views.ts';
import { columnsInSight, drawAround, rowsInSight } from '../../../renderer/surface/draw-around.ts';
import { drawRules } from '../../../renderer/surface/draw-rules.ts';
import { looksFromPx } from '../../../renderer/surface/knot-look.ts';
import { type Inks, type Look, lookOf } from '../../../renderer/surface/look.ts';
import { columnEdge, rowEdge, type View } from '../../../renderer/surface/view.ts';
import { goesRight } from '../../../shared/chart/chart.ts';
import { BARE } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';

const tileCells = 50;

export class BareChart {
  readonly canvas: HTMLCanvasElement;
  readonly pen: CanvasRenderingContext2D;
  readonly #design: Design;
  readonly #cells: Uint8Array;
  readonly #inks: Inks;
  readonly #bitmap: HTMLCanvasElement;
  readonly #bitmapPen: CanvasRenderingContext2D;
  readonly #look: Look;
  readonly #colors: string[] = [];
  #tiles = new Map<string, HTMLCanvasElement>();
  #tilesScale = 0;

  constructor(canvas: HTMLCanvasElement, design: Design, cells: Uint8Array, inks: Inks, views: Views) {
    this.canvas = canvas;
    this.#design = design;
    this.#cells = cells;
    this.#inks = inks;
    this.pen = canvas.getContext('2d')!;
    this.#look = lookOf(design, views);
    for (const { id, color } of design.yarns) this.#colors[Number(id.slice(1))] = color;
    this.#bitmap = document.createElement('canvas');
    this.#bitmap.width = design.columns;
    this.#bitmap.height = design.rows;
    this.#bitmapPen = this.#bitmap.getContext('2d', { willReadFrequently: true })!;
    cells.forEach((code, i) => {
      this.#bitmapPen.fillStyle = this.#colors[code] ?? '#000000';
      if (code !== BARE) this.#bitmapPen.fillRect(i % design.columns, Math.floor(i / design.columns), 1, 1);
    });
  }

  /** `zooming`: tiles of the size before are stretched instead of made anew. */
  drawAll(view: View, zooming = false): void {
    const { pen, canvas } = this;
    const { geometry } = this.#look;
    pen.clearRect(0, 0, canvas.width, canvas.height);
    pen.imageSmoothingEnabled = false;
    drawAround(pen, view, geometry, this.#inks, canvas.width);
    if (geometry.pitchMm * view.scale < looksFromPx[this.#look.view]) this.#drawBitmap(view);
    else this.#drawTiles(view, zooming);
    drawRules(pen, {
      view,
      isZooming: zooming,
      hasTens: true,
      tapePx: { side: 0, top: 0 },
      geometry,
      startCorner: this.#design.startCorner,
      inks: this.#inks,
      widthPx: canvas.width,
      heightPx: canvas.height,
      ratio: 1,
    });
  }

  /** One cell, and only its own place on the canvas. */
  edit(view: View, row: number, column: number, code: number): void {
    const { geometry } = this.#look;
    this.#cells[row * this.#design.columns + column] = code;
    this.#bitmapPen.fillStyle = this.#colors[code]!;
    this.#bitmapPen.fillRect(column, row, 1, 1);
    const [x, y] = [columnEdge(view, geometry, column), rowEdge(view, geometry, row)];
    const [width, height] = [
      columnEdge(view, geometry, column + 1) - x,
      rowEdge(view, geometry, row + 1) - y,
    ];
    if (geometry.pitchMm * view.scale < looksFromPx[this.#look.view]) {
      this.pen.fillStyle = this.#colors[code]!;
      this.pen.fillRect(x, y, width, height);
      return;
    }
    const look = this.#look.cells.of(code, goesRight(this.#design.startCorner, row), width, height);
    this.pen.drawImage(look, x, y);
    const [tileRow, tileColumn] = [Math.floor(row / tileCells), Math.floor(column / tileCells)];
    const tile = this.#tiles.get(`${tileRow} ${tileColumn}`);
    const [left, top] = [
      columnEdge(view, geometry, tileColumn * tileCells),
      rowEdge(view, geometry, tileRow * tileCells),
    ];
    tile?.getContext('2d')?.drawImage(look, x - left, y - top);
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
        const tile = this.#tiles.get(`${tr} ${tc}`) ?? this.#makeTile(view, tr, tc);
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

  #makeTile(view: View, tileRow: number, tileColumn: number): HTMLCanvasElement {
    const { geometry } = this.#look;
    const { columns, rows, startCorner } = this.#design;
    const tile = document.createElement('canvas');
    const flat = { ...view, x: 0, y: 0 };
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
        pen.drawImage(
          this.#look.cells.of(this.#cells[r * columns + c]!, goesRight(startCorner, r), w, h),
          x - x0,
          y - y0,
        );
      }
    }
    this.#tiles.set(`${tileRow} ${tileColumn}`, tile);
    return tile;
  }
}
