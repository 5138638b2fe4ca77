/**
 * Where the hanging lies on the screen: fitting, zooming, panning, going across the room, and from the screen's pixels
 * to cells and mm and back. The surface draws what its lens shows.
 */
import type { HangingGeometry } from '../../shared/chart/hanging/geometry.ts';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { acrossRoomMm, awayMmAt, cssPxPerMm, scaleFrom } from './across-room.ts';
import { boxInSight } from './box-in-sight.ts';
import { symbolsFromPx } from './knot-look.ts';
import type { Placed } from './placed.ts';
import { cellAt, columnEdge, fitted, middled, panned, rowEdge, type View, zoomed } from './view.ts';

/** How long a zoom must rest before tiles are drawn at its size. */
const settleMs = 140;
/** Room around the hanging where all of it is in sight, in CSS pixels. */
const marginPx = 34;
/** Room for the numbers around the knotted picture, in CSS pixels. */
const numbersPx = 44;
/** From farther away the hanging would be a few pixels. */
const farthestMm = 20_000;

interface Point {
  readonly x: number;
  readonly y: number;
}

export abstract class Lens {
  readonly #onView = new Set<() => void>();
  #geometry: HangingGeometry;
  #view: View = { scale: 1, x: 0, y: 0 };
  /** What was in sight before the person went across the room; null where they are near. */
  #nearView: { view: View; isFitted: boolean } | null = null;
  #width = 1;
  #height = 1;
  #ratio = 1;
  #isFitted = true;
  #isZooming = false;
  #settle = 0;

  constructor(geometry: HangingGeometry, onView: () => void) {
    this.#geometry = geometry;
    this.#onView.add(onView);
  }

  /** Called whenever all that is in sight must be drawn again. */
  protected abstract redraw(): void;

  destroy(): void {
    clearTimeout(this.#settle);
  }

  /** Calls `listener` whenever the hanging has moved or changed on the screen, until it is forgotten. */
  onView(listener: () => void): () => void {
    this.#onView.add(listener);
    return () => this.#onView.delete(listener);
  }

  /** The whole hanging in sight (see `box-in-sight.ts`), and kept so while the window changes its size. */
  fit(): void {
    this.#isFitted = true;
    this.#show(this.#fitted());
  }

  /** The knotted picture in sight and as large as the screen allows, the rest of the hanging beyond the edges. */
  fitChart(): void {
    this.#isFitted = false;
    const { widthMm, heightMm } = this.#geometry;
    const chart = { left: 0, top: 0, right: widthMm, bottom: heightMm };
    this.#show(fitted(chart, this.#width, this.#height, numbersPx * this.#ratio));
  }

  /** Zoomed around a point in CSS pixels of the element; around its middle where none is given. */
  zoom(factor: number, at?: Point): void {
    this.#isFitted = false;
    this.#isZooming = true;
    clearTimeout(this.#settle);
    this.#settle = window.setTimeout(() => {
      this.#isZooming = false;
      this.redraw();
    }, settleMs);
    const x = at ? at.x * this.#ratio : this.#width / 2;
    const y = at ? at.y * this.#ratio : this.#height / 2;
    // Half the size at which all of it is in sight is small enough, but across the room it may look smaller.
    const half = fitted(this.#geometry.bounds, this.#width, this.#height, 0).scale / 2;
    const least = this.#nearView ? Math.min(half, scaleFrom(farthestMm) * this.#ratio) : half;
    const real = Math.max(factor, Math.min(1, least / this.#view.scale));
    this.#show(zoomed(this.#view, this.#geometry, real, x, y));
  }

  /** As large as the hanging will be, as far as the screen keeps to what CSS calls an inch. */
  zoomToReal(): void {
    this.zoom((cssPxPerMm * this.#ratio) / this.#view.scale);
  }

  /** Moved by CSS pixels. */
  pan(dx: number, dy: number): void {
    this.#isFitted = false;
    this.#show(panned(this.#view, dx * this.#ratio, dy * this.#ratio));
  }

  /** Shows the hanging as small as it looks from across the room; from farther away where the screen is too small. */
  goAcrossRoom(): void {
    this.#nearView = { view: this.#view, isFitted: this.#isFitted };
    this.#isFitted = false;
    const scale = Math.min(scaleFrom(acrossRoomMm) * this.#ratio, this.#fitted().scale);
    this.#show(middled(this.#geometry.bounds, this.#width, this.#height, scale));
  }

  /** Shows what was in sight before. */
  comeBack(): void {
    const before = this.#nearView;
    this.#nearView = null;
    if (!before || before.isFitted) this.fit();
    else this.#show(before.view);
  }

  /** The view as it is, and as it shall be: for the bench. */
  get view(): View {
    return this.#view;
  }
  set view(view: View) {
    this.#isFitted = false;
    this.#show(view);
  }

  /** How the hanging that is shown lies, in mm. */
  get geometry(): HangingGeometry {
    return this.#geometry;
  }

  /** Of the screen that it is shown on, in CSS pixels. */
  get screen(): { width: number; height: number } {
    return { width: this.#width / this.#ratio, height: this.#height / this.#ratio };
  }

  /** How far away the hanging looks, in mm, as it is shown now. */
  get awayMm(): number {
    return awayMmAt(this.#view.scale / this.#ratio);
  }

  /** False where cells are too small for their yarns' symbols. */
  get hasRoomForSymbols(): boolean {
    return this.#geometry.pitchMm * this.#view.scale >= symbolsFromPx;
  }

  /** The cell at a place in CSS pixels of the element; outside the chart where the place is. */
  cellAt(x: number, y: number): Cell {
    return cellAt(this.#view, this.#geometry, x * this.#ratio, y * this.#ratio);
  }

  /** The place of the hanging, in mm, at a point in CSS pixels of the element. */
  mmAt({ x, y }: Point): Point {
    const { scale, x: left, y: top } = this.#view;
    return { x: (x * this.#ratio - left) / scale, y: (y * this.#ratio - top) / scale };
  }

  /** Where a place of the hanging, in mm, is in CSS pixels of the element. */
  pointOf({ x, y }: Point): Point {
    const { scale, x: left, y: top } = this.#view;
    return { x: (left + x * scale) / this.#ratio, y: (top + y * scale) / this.#ratio };
  }

  /** Where a cell is, in CSS pixels of the element. */
  placeOf({ row, column }: Cell): { x: number; y: number; width: number; height: number } {
    const x = columnEdge(this.#view, this.#geometry, column);
    const y = rowEdge(this.#view, this.#geometry, row);
    return {
      x: x / this.#ratio,
      y: y / this.#ratio,
      width: (columnEdge(this.#view, this.#geometry, column + 1) - x) / this.#ratio,
      height: (rowEdge(this.#view, this.#geometry, row + 1) - y) / this.#ratio,
    };
  }

  /** Brings a cell into sight, for the keyboard. */
  reveal(cell: Cell): void {
    const { x, y, width, height } = this.placeOf(cell);
    const margin = 48;
    const across = Math.max(margin - x, 0) + Math.min(this.#width / this.#ratio - margin - x - width, 0);
    const down = Math.max(margin - y, 0) + Math.min(this.#height / this.#ratio - margin - y - height, 0);
    if (across !== 0 || down !== 0) this.pan(across, down);
  }

  protected get placed(): Placed {
    return {
      view: this.#view,
      widthPx: this.#width,
      heightPx: this.#height,
      ratio: this.#ratio,
      isZooming: this.#isZooming,
    };
  }

  /** The screen has another size, in device pixels, or other pixels. */
  protected takeSize(widthPx: number, heightPx: number, ratio: number): void {
    this.#width = widthPx;
    this.#height = heightPx;
    this.#ratio = ratio;
    if (this.#isFitted) this.fit();
    else this.#show(this.#view);
  }

  /** Another hanging, or the same with other cords. `isStill`: it stays where it is even where it no longer fits. */
  protected takeGeometry(geometry: HangingGeometry, isStill: boolean): void {
    const sameSize = sameBox(geometry.bounds, this.#geometry.bounds) && sameCells(geometry, this.#geometry);
    this.#geometry = geometry;
    if (this.#isFitted && !sameSize && !isStill) this.fit();
    else this.#show(this.#view);
  }

  /** After the hanging has grown below a still view: all of it in sight again, where it was so before. */
  protected catchUp(): void {
    const bottom = this.#view.y + this.#geometry.bounds.bottom * this.#view.scale;
    if (this.#isFitted && bottom > this.#height) this.fit();
  }

  #fitted(): View {
    return fitted(boxInSight(this.#geometry), this.#width, this.#height, marginPx * this.#ratio);
  }

  #show(view: View): void {
    this.#view = view;
    this.redraw();
    for (const listener of this.#onView) listener();
  }
}

function sameBox(a: HangingGeometry['bounds'], b: HangingGeometry['bounds']): boolean {
  return a.left === b.left && a.top === b.top && a.right === b.right && a.bottom === b.bottom;
}

function sameCells(a: HangingGeometry, b: HangingGeometry): boolean {
  return a.widthMm === b.widthMm && a.heightMm === b.heightMm;
}
