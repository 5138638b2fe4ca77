/**
 * The chart surface: the hanging on screen, drawn by Konva on three sheets so that each thing is drawn only when it
 * changes: what hangs around the chart, the chart itself (`chart-sheet.ts`), and the rules and numbers over it.
 *
 * The surface follows the store by itself; React only mounts its stage. An edit paints just its own block of the chart in the
 * next frame; a change of the view draws all three sheets.
 */
import Konva from 'konva';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import type { OpenDesign } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { type CellBlock, changedBlocks } from './chart-bitmap.ts';
import { ChartSheet } from './chart-sheet.ts';
import { drawAround } from './draw-around.ts';
import { drawRules } from './draw-rules.ts';
import { type Inks, inksOf, type Look, lookOf, looksAlike } from './look.ts';
import { cellAt, columnEdge, fitted, panned, rowEdge, type View, zoomed } from './view.ts';

Konva.autoDrawEnabled = false;
// The stage is as large as the screen's own pixels; its element is scaled back to CSS pixels.
Konva.pixelRatio = 1;

/** How long a zoom must rest before tiles are drawn at its size. */
const settleMs = 140;

export class Surface {
  readonly #element: HTMLElement;
  readonly #stage: Konva.Stage;
  readonly #around = new Konva.Layer({ listening: false });
  readonly #sheet: ChartSheet;
  readonly #rules = new Konva.Layer({ listening: false });
  readonly #forget: (() => void)[] = [];
  readonly #onView: () => void;

  #open: OpenDesign;
  #look: Look;
  #inks: Inks;
  #view: View = { scale: 1, x: 0, y: 0 };
  #width = 1;
  #height = 1;
  #ratio = 1;
  #isFitted = true;
  #isZooming = false;
  #settle = 0;
  #frame = 0;
  #wholeDirty = true;
  #dirty: CellBlock[] = [];

  /**
   * Draws on an empty stage that lies in `element` and fills it. `onView` is called whenever the hanging has moved on
   * the screen. A design must be open.
   */
  constructor(element: HTMLElement, stage: Konva.Stage, onView: () => void) {
    const { open, views } = studio.getState();
    if (!open) throw new Error('a surface needs an open design');
    this.#element = element;
    this.#onView = onView;
    this.#open = open;
    this.#look = lookOf(open.design, views.cells === 'symbols');
    this.#sheet = new ChartSheet(open.chart, this.#look);
    this.#inks = inksOf(element);
    this.#stage = stage;
    this.#stage.container().style.transformOrigin = '0 0';
    this.#stage.add(this.#around, this.#sheet.layer, this.#rules);
    this.#addShapes();
    this.#follow();
    this.resize();
  }

  destroy(): void {
    for (const forget of this.#forget) forget();
    cancelAnimationFrame(this.#frame);
    clearTimeout(this.#settle);
    this.#stage.destroyChildren();
  }

  /** The whole hanging in sight, and kept so while the window changes its size. */
  fit(): void {
    this.#isFitted = true;
    this.#show(fitted(this.#look.geometry.bounds, this.#width, this.#height, 34 * this.#ratio));
  }

  /** Zoomed around a point in CSS pixels of the element; around its middle where none is given. */
  zoom(factor: number, at?: { x: number; y: number }): void {
    this.#isFitted = false;
    this.#isZooming = true;
    clearTimeout(this.#settle);
    this.#settle = window.setTimeout(() => {
      this.#isZooming = false;
      this.#redraw();
    }, settleMs);
    const x = at ? at.x * this.#ratio : this.#width / 2;
    const y = at ? at.y * this.#ratio : this.#height / 2;
    // Half the size at which all of it is in sight is small enough.
    const least = fitted(this.#look.geometry.bounds, this.#width, this.#height, 0).scale / 2;
    const real = Math.max(factor, Math.min(1, least / this.#view.scale));
    this.#show(zoomed(this.#view, this.#look.geometry, real, x, y));
  }

  /** Moved by CSS pixels. */
  pan(dx: number, dy: number): void {
    this.#isFitted = false;
    this.#show(panned(this.#view, dx * this.#ratio, dy * this.#ratio));
  }

  /** The view as it is, and as it shall be: for the bench. */
  get view(): View {
    return this.#view;
  }
  set view(view: View) {
    this.#isFitted = false;
    this.#show(view);
  }

  /** The cell at a place in CSS pixels of the element; outside the chart where the place is. */
  cellAt(x: number, y: number): Cell {
    return cellAt(this.#view, this.#look.geometry, x * this.#ratio, y * this.#ratio);
  }

  /** Where a cell is, in CSS pixels of the element. */
  placeOf({ row, column }: Cell): { x: number; y: number; width: number; height: number } {
    const { geometry } = this.#look;
    const x = columnEdge(this.#view, geometry, column);
    const y = rowEdge(this.#view, geometry, row);
    return {
      x: x / this.#ratio,
      y: y / this.#ratio,
      width: (columnEdge(this.#view, geometry, column + 1) - x) / this.#ratio,
      height: (rowEdge(this.#view, geometry, row + 1) - y) / this.#ratio,
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

  /** Takes the element's size; called when the window changes. */
  resize(): void {
    const { width, height } = this.#element.getBoundingClientRect();
    this.#ratio = window.devicePixelRatio || 1;
    this.#width = Math.max(1, Math.round(width * this.#ratio));
    this.#height = Math.max(1, Math.round(height * this.#ratio));
    this.#stage.size({ width: this.#width, height: this.#height });
    this.#stage.container().style.transform = `scale(${1 / this.#ratio})`;
    if (this.#isFitted) this.fit();
    else this.#show(this.#view);
  }

  /** Draws what is due now instead of in the next frame. */
  drawNow(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    if (this.#wholeDirty) {
      this.#wholeDirty = false;
      this.#dirty = [];
      this.#around.draw();
      const isWhole = this.#sheet.draw({
        view: this.#view,
        widthPx: this.#width,
        heightPx: this.#height,
        isZooming: this.#isZooming,
      });
      this.#rules.draw();
      if (!isWhole) this.#redraw();
      return;
    }
    const blocks = this.#dirty;
    this.#dirty = [];
    this.#sheet.paint(blocks);
  }

  #show(view: View): void {
    this.#view = view;
    this.#redraw();
    this.#onView();
  }

  #redraw(): void {
    this.#wholeDirty = true;
    this.#ask();
  }

  #ask(): void {
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.drawNow());
  }

  #addShapes(): void {
    const shape = (draw: (pen: CanvasRenderingContext2D) => void) =>
      new Konva.Shape({
        listening: false,
        perfectDrawEnabled: false,
        sceneFunc: (context) => draw(context._context),
      });
    this.#around.add(
      shape((pen) => drawAround(pen, this.#view, this.#look.geometry, this.#inks, this.#width)),
    );
    this.#rules.add(
      shape((pen) =>
        drawRules(pen, this.#view, {
          geometry: this.#look.geometry,
          startCorner: this.#open.design.startCorner,
          inks: this.#inks,
          widthPx: this.#width,
          heightPx: this.#height,
          ratio: this.#ratio,
        }),
      ),
    );
  }

  #follow(): void {
    this.#forget.push(
      studio.subscribe((state, before) => {
        if (!state.open) return;
        if (state.open !== this.#open || state.views !== before.views)
          this.#take(state.open, state.views.cells === 'symbols');
      }),
    );
    const sizes = new ResizeObserver(() => this.resize());
    sizes.observe(this.#element);
    this.#followRatio();
    const theme = new MutationObserver(() => {
      this.#inks = inksOf(this.#element);
      this.#redraw();
    });
    theme.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    // Numbers drawn before their font came are drawn again.
    document.fonts.ready.then(() => this.#redraw());
    this.#forget.push(
      () => sizes.disconnect(),
      () => theme.disconnect(),
    );
  }

  /** Another screen may have other pixels: the query holds for one ratio only, so each change asks for the next. */
  #followRatio(): void {
    const query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    const onChange = () => {
      this.resize();
      this.#followRatio();
    };
    query.addEventListener('change', onChange, { once: true });
    this.#forget.push(() => query.removeEventListener('change', onChange));
  }

  /** Follows the store to its next state. */
  #take(open: OpenDesign, symbols: boolean): void {
    const before = this.#open;
    this.#open = open;
    if (!looksAlike(before.design, open.design) || symbols !== this.#look.symbols) {
      this.#takeLook(symbols);
      return;
    }
    if (open.chart === before.chart) return;
    const blocks = changedBlocks(before.chart, open.chart, open.touched);
    if (blocks.length === 0) return;
    for (const block of blocks) this.#sheet.patch(open.chart, block);
    this.#dirty.push(...blocks);
    this.#ask();
  }

  #takeLook(symbols: boolean): void {
    const { geometry: old } = this.#look;
    this.#look = lookOf(this.#open.design, symbols);
    this.#sheet.takeLook(this.#open.chart, this.#look);
    const { geometry } = this.#look;
    const sameSize = geometry.widthMm === old.widthMm && geometry.heightMm === old.heightMm;
    if (this.#isFitted && (!sameSize || geometry.bounds.bottom !== old.bounds.bottom)) this.fit();
    else this.#redraw();
  }
}
