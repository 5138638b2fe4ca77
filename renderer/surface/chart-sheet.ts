/**
 * The sheet with the hanging: what hangs around the chart and behind it, and the chart itself. Small cells come from one bitmap of a pixel a cell, drawn as a single image; from a
 * certain size on cells have a look and come from tiles. Where tiles are still missing, those of the size before stand
 * in for them, and below those the bitmap.
 *
 * A small edit paints its own block and leaves the rest of the sheet as it is. In the distance view small cells are
 * added up by their light instead (`far-picture.ts`).
 */
import Konva from 'konva';
import { type Chart, goesRight } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import { type CellBlock, ChartBitmap } from './chart-bitmap.ts';
import { cellsInSight } from './draw-around.ts';
import { FarPicture } from './far-picture.ts';
import { looksFromPx } from './knot-look.ts';
import type { Look } from './look.ts';
import type { Placed } from './placed.ts';
import { TileSet } from './tiles.ts';
import { columnEdge, rowEdge } from './view.ts';

interface Found {
  readonly tile: HTMLCanvasElement | null;
  readonly cells: CellBlock;
}

/** Whole device pixels. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Time of one frame that may go into new tiles. */
const tileBudgetMs = 9;
/** A block of more cells than this is drawn with the whole chart. */
const smallBlock = 1024;

type Pen = CanvasRenderingContext2D;

export class ChartSheet {
  readonly layer = new Konva.Layer({ listening: false });
  readonly #image = new Konva.Image({ image: undefined, listening: false, perfectDrawEnabled: false });
  #chart: Chart;
  #look: Look;
  #bitmap: ChartBitmap;
  #placed: Placed = { view: { scale: 1, x: 0, y: 0 }, widthPx: 1, heightPx: 1, ratio: 1, isZooming: false };
  /** Null but in the distance view. */
  #far: FarPicture | null = null;
  #tiles: TileSet | null = null;
  /** Of the size before. */
  #oldTiles: TileSet | null = null;

  readonly #drawBehind: (pen: Pen) => void;

  /**
   * `behind` draws what hangs around the chart and behind it, `above` what lies on the same sheet over its cells.
   * `isFar`: as it is seen across the room.
   */
  constructor(
    chart: Chart,
    look: Look,
    isFar: boolean,
    { behind, above }: { readonly behind: (pen: Pen) => void; readonly above: (pen: Pen) => void },
  ) {
    this.#drawBehind = behind;
    this.#chart = chart;
    this.#look = look;
    this.#far = isFar ? new FarPicture(look) : null;
    this.#bitmap = wholeBitmap(chart, look);
    this.layer.add(
      shape(behind),
      this.#image,
      shape((pen) => this.#drawTiles(pen)),
      shape(above),
    );
  }

  /** Everything anew: other yarns, another size, another way to show them. `isFar`: as it is seen across the room. */
  takeLook(chart: Chart, look: Look, isFar: boolean): void {
    this.#chart = chart;
    this.#look = look;
    this.#far = isFar ? new FarPicture(look) : null;
    this.#bitmap = wholeBitmap(chart, look);
    this.#tiles = null;
    this.#oldTiles = null;
  }

  /** Other cords or another dowel around the same cells. */
  takeAround(look: Look): void {
    this.#look = look;
  }

  /** The chart with other cells in one block. */
  patch(chart: Chart, block: CellBlock): void {
    this.#chart = chart;
    this.#bitmap.patch(chart, this.#look.words, block);
    this.#tiles?.patch(chart, block);
    this.#oldTiles?.patch(chart, block);
  }

  /** Draws all that is in sight. False where tiles are still missing: draw again in the next frame. */
  draw(placed: Placed): boolean {
    this.#placed = placed;
    this.#chooseTiles();
    const isWhole = placed.isZooming || this.#makeTiles();
    if (isWhole && !placed.isZooming) this.#oldTiles = null;
    if (this.#isFar()) this.#far!.make(this.#chart, placed);
    const { view } = placed;
    const { geometry } = this.#look;
    const { columns, rows } = geometry;
    const [x, y] = [columnEdge(view, geometry, 0), rowEdge(view, geometry, 0)];
    this.#image.setAttrs({
      image: this.#bitmap.canvas,
      x,
      y,
      width: columnEdge(view, geometry, columns) - x,
      height: rowEdge(view, geometry, rows) - y,
      visible: !this.#hasLooks() && !this.#isFar(),
    });
    // Cells smaller than a pixel are averaged: single ones would come and go while the view moves.
    this.layer.imageSmoothingEnabled(this.#cellPx() < 1);
    this.layer.draw();
    return isWhole;
  }

  /**
   * True where every edit draws the whole sheet: averaged pixels hold a little of the cells around them, so there a block
   * is not painted by itself.
   */
  drawsWhole({ view }: Placed): boolean {
    return this.#look.geometry.pitchMm * view.scale < 1;
  }

  /** Paints blocks of cells where the sheet was drawn last. False where tiles are missing, as `draw` does. */
  paint(blocks: readonly CellBlock[]): boolean {
    if (this.drawsWhole(this.#placed) || this.#isFar() || blocks.some(isLarge))
      return this.draw(this.#placed);
    for (const block of blocks) this.#paintBlock(block);
    return true;
  }

  /**
   * Cell by cell, not from bitmap or tile: a canvas that was drawn from must be copied by the browser before it can be
   * patched the next time, and that would cost more than all the rest of an edit.
   */
  #paintBlock({ left, top, right: last, bottom }: CellBlock): void {
    const pen = this.layer.getContext()._context;
    const { columns, cells, startCorner } = this.#chart;
    const { colors, cells: looks } = this.#look;
    const hasLooks = this.#hasLooks();
    const bare: Box[] = [];
    for (let row = top; row <= bottom; row++) {
      const right = goesRight(startCorner, row);
      for (let column = left; column <= last; column++) {
        const code = cells[row * columns + column]!;
        const box = this.#pixelsOf({ left: column, top: row, right: column, bottom: row });
        if (code === BARE) bare.push(box);
        else if (hasLooks) pen.drawImage(looks.of(code, right, box.width, box.height), box.x, box.y);
        else {
          pen.fillStyle = colors[right ? 'right' : 'left'][code]!;
          pen.fillRect(box.x, box.y, box.width, box.height);
        }
      }
    }
    if (bare.length > 0) this.#drawBare(pen, bare);
  }

  /** Cells in which the cord shows: what hangs behind them is drawn again, and nowhere else. */
  #drawBare(pen: Pen, boxes: readonly Box[]): void {
    pen.save();
    pen.beginPath();
    for (const { x, y, width, height } of boxes) {
      pen.clearRect(x, y, width, height);
      pen.rect(x, y, width, height);
    }
    pen.clip();
    this.#drawBehind(pen);
    pen.restore();
  }

  #cellPx(): number {
    return this.#look.geometry.pitchMm * this.#placed.view.scale;
  }

  #hasLooks(): boolean {
    return this.#cellPx() >= looksFromPx[this.#look.view];
  }

  #isFar(): boolean {
    return this.#far !== null && !this.#hasLooks();
  }

  /** Tiles for the size shown; none where cells are too small for a look. */
  #chooseTiles(): void {
    const { view, isZooming } = this.#placed;
    if (!this.#hasLooks()) {
      if (!isZooming) this.#tiles = null;
      this.#oldTiles = null;
      return;
    }
    if (this.#tiles && (isZooming || this.#tiles.scale === view.scale)) return;
    this.#oldTiles = this.#tiles;
    this.#tiles = new TileSet(view.scale, this.#look.cells, this.#look.geometry);
  }

  /** Makes tiles that are in sight, as far as one frame's time reaches; true where none is missing any more. */
  #makeTiles(): boolean {
    const tiles = this.#tiles;
    const inSight = this.#cellsInSight();
    if (!tiles || !inSight || !this.#hasLooks()) return true;
    const until = performance.now() + tileBudgetMs;
    for (const [tileRow, tileColumn] of tiles.tilesOf(inSight)) {
      if (tiles.have(tileRow, tileColumn)) continue;
      if (performance.now() > until) return false;
      tiles.make(this.#chart, tileRow, tileColumn);
    }
    return true;
  }

  #drawTiles(pen: Pen): void {
    const inSight = this.#cellsInSight();
    if (this.#isFar()) this.#far?.draw(pen);
    else if (inSight && this.#hasLooks()) this.#copyTiles(pen, inSight);
  }

  #copyTiles(pen: Pen, block: CellBlock): void {
    const now = this.#found(this.#tiles, block);
    if (now.some(({ tile }) => !tile)) {
      this.#copyFromBitmap(pen, block);
      this.#copyFound(pen, this.#found(this.#oldTiles, block));
    }
    this.#copyFound(pen, now);
  }

  /** The tiles in which a block lies; null for one that was not made. */
  #found(set: TileSet | null, block: CellBlock): Found[] {
    if (!set) return [];
    return set.tilesOf(block).map(([tileRow, tileColumn]) => ({
      tile: set.have(tileRow, tileColumn),
      cells: set.cellsOf(this.#chart, tileRow, tileColumn),
    }));
  }

  #copyFound(pen: Pen, found: readonly Found[]): void {
    for (const { tile, cells } of found) {
      if (!tile) continue;
      const { x, y, width, height } = this.#pixelsOf(cells);
      if (tile.width === width && tile.height === height) pen.drawImage(tile, x, y);
      else pen.drawImage(tile, x, y, width, height);
    }
  }

  #copyFromBitmap(pen: Pen, block: CellBlock): void {
    const { x, y, width, height } = this.#pixelsOf(block);
    const { left, top, right, bottom } = block;
    pen.drawImage(this.#bitmap.canvas, left, top, right - left + 1, bottom - top + 1, x, y, width, height);
  }

  /** Null where the chart is out of sight. */
  #cellsInSight(): CellBlock | null {
    const { view, widthPx, heightPx } = this.#placed;
    return cellsInSight(view, this.#look.geometry, widthPx, heightPx);
  }

  #pixelsOf({ left, top, right, bottom }: CellBlock): Box {
    const { view } = this.#placed;
    const { geometry } = this.#look;
    const x = columnEdge(view, geometry, left);
    const y = rowEdge(view, geometry, top);
    return {
      x,
      y,
      width: columnEdge(view, geometry, right + 1) - x,
      height: rowEdge(view, geometry, bottom + 1) - y,
    };
  }
}

function shape(draw: (pen: Pen) => void): Konva.Shape {
  return new Konva.Shape({
    listening: false,
    perfectDrawEnabled: false,
    sceneFunc: (context) => draw(context._context),
  });
}

function wholeBitmap(chart: Chart, { words }: Look): ChartBitmap {
  const bitmap = new ChartBitmap(chart.columns, chart.rows);
  bitmap.patch(chart, words, { left: 0, top: 0, right: chart.columns - 1, bottom: chart.rows - 1 });
  return bitmap;
}

function isLarge({ left, top, right, bottom }: CellBlock): boolean {
  return (right - left + 1) * (bottom - top + 1) > smallBlock;
}
