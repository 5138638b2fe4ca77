/**
 * The chart surface: the hanging on screen, drawn by Konva on four sheets so that each thing is drawn only when it
 * changes: the hanging itself (`chart-sheet.ts`), what lies over its cells (`over-sheet.ts`), rules, numbers and the
 * symmetry's axes, and the ghost of what would be drawn (`ghost-sheet.ts`).
 *
 * The surface follows the store by itself; React only mounts its stage. An edit paints just its own block of the chart
 * in the next frame; a change of the view draws all sheets.
 */
import Konva from 'konva';
import type { Design } from '../../shared/design/design.ts';
import type { OpenDesign, StudioState } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { bareColumns, markBare } from './bare-columns.ts';
import { type CellBlock, changedBlocks } from './chart-bitmap.ts';
import { ChartSheet } from './chart-sheet.ts';
import { drawAround } from './draw-around.ts';
import { drawOverlays, overlaysAlike } from './draw-overlays.ts';
import { drawRules, type Rules } from './draw-rules.ts';
import { drawTapes, tapePx } from './draw-tapes.ts';
import { GhostSheet } from './ghost-sheet.ts';
import { Lens } from './lens.ts';
import {
  cellsLookAlike,
  cellViewOf,
  geometryOf,
  hangsAlike,
  type Inks,
  inksOf,
  type Look,
  lookOf,
} from './look.ts';
import { OverSheet } from './over-sheet.ts';

Konva.autoDrawEnabled = false;
// The stage is as large as the screen's own pixels; its element is scaled back to CSS pixels.
Konva.pixelRatio = 1;

export class Surface extends Lens {
  readonly #element: HTMLElement;
  readonly #seen: (state: StudioState) => StudioState;
  readonly #stage: Konva.Stage;
  readonly #sheet: ChartSheet;
  readonly #over = new OverSheet(() => this.redraw());
  readonly #rules = new Konva.Layer({ listening: false });
  readonly #ghost = new GhostSheet();
  readonly #forget: (() => void)[] = [];

  #state: StudioState;
  #open: OpenDesign;
  #look: Look;
  /** The columns whose cords show between knots. */
  #bare: Uint8Array;
  #inks: Inks;
  #frame = 0;
  #wholeDirty = true;
  #overDirty = false;
  #rulesDirty = false;
  #ghostDirty = false;
  #dirty: CellBlock[] = [];

  /**
   * Draws on an empty stage that lies in `element` and fills it. `onView` is called whenever the hanging has moved on
   * the screen. `seen` tells what of the studio's state is shown, where that is not all. A design must be open.
   */
  constructor(
    element: HTMLElement,
    stage: Konva.Stage,
    onView: () => void,
    seen: (state: StudioState) => StudioState = (state) => state,
  ) {
    const state = seen(studio.getState());
    if (!state.open) throw new Error('a surface needs an open design');
    const look = lookOf(shownDesign(state, state.open), state.views);
    super(look.geometry, onView);
    this.#element = element;
    this.#seen = seen;
    this.#state = state;
    this.#open = state.open;
    this.#look = look;
    this.#bare = bareColumns(state.open.chart);
    const { distance } = state.views;
    this.#sheet = new ChartSheet(state.open.chart, look, distance, {
      behind: (pen) => this.#drawAround(pen),
      above: (pen) => this.#hasRulesBelow() && this.#drawRules(pen),
    });
    this.#inks = inksOf(element, state.views.sight);
    this.#stage = stage;
    this.#stage.container().style.transformOrigin = '0 0';
    this.#stage.add(this.#sheet.layer, this.#over.layer, this.#rules, this.#ghost.layer);
    const sceneFunc = (context: Konva.Context) => this.#drawRules(context._context);
    this.#rules.add(new Konva.Shape({ listening: false, perfectDrawEnabled: false, sceneFunc }));
    this.#layOver();
    this.#follow();
    this.resize();
    if (state.views.distance) this.goAcrossRoom();
  }

  override destroy(): void {
    super.destroy();
    for (const forget of this.#forget) forget();
    cancelAnimationFrame(this.#frame);
    this.#over.forget();
    this.#stage.destroyChildren();
  }

  /** Takes the element's size; called when the window changes. */
  resize(): void {
    const { width, height } = this.#element.getBoundingClientRect();
    const ratio = window.devicePixelRatio || 1;
    const pxOf = (side: number) => Math.max(1, Math.round(side * ratio));
    const [widthPx, heightPx] = [pxOf(width), pxOf(height)];
    this.#stage.size({ width: widthPx, height: heightPx });
    this.#stage.container().style.transform = `scale(${1 / ratio})`;
    this.takeSize(widthPx, heightPx, ratio);
  }

  /** Draws what is due now instead of in the next frame. False where something is still missing then. */
  drawNow(): boolean {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    const { placed } = this;
    const blocks = this.#dirty;
    const whole = this.#wholeDirty;
    this.#dirty = [];
    this.#wholeDirty = false;
    const isOnSheet = this.#rulesDirty && this.#hasRulesBelow();
    const isWhole = whole || isOnSheet ? this.#sheet.draw(placed) : this.#sheet.paint(blocks);
    if (whole || this.#overDirty) this.#over.draw(placed);
    this.#rules.visible(!this.#hasRulesBelow());
    if ((whole || this.#rulesDirty) && this.#rules.visible()) this.#rules.draw();
    if (whole || this.#ghostDirty)
      this.#ghost.draw(this.#ghostNow(), this.#look, this.#inks, placed, this.#tapePx());
    this.#overDirty = false;
    this.#rulesDirty = false;
    this.#ghostDirty = false;
    if (!isWhole) this.redraw();
    return isWhole;
  }

  protected override redraw(): void {
    this.#wholeDirty = true;
    this.#ask();
  }

  #ask(): void {
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.drawNow());
  }

  #drawAround(pen: CanvasRenderingContext2D): void {
    drawAround(pen, this.view, this.#look.geometry, this.#inks, this.#bare, this.placed.widthPx);
  }

  /**
   * True where rules are drawn on the chart's own sheet: with cells so small every edit draws all of it anyway, and a
   * sheet less is a canvas less to fill in each frame.
   */
  #hasRulesBelow(): boolean {
    return this.#sheet.drawsWhole(this.placed) && !this.#over.layer.visible();
  }

  #drawRules(pen: CanvasRenderingContext2D): void {
    const { views, settings } = this.#state;
    const { placed } = this;
    if (views.finished || views.distance) return;
    // Below the strips of paper on which numbers stand at the screen's edges.
    drawOverlays(pen, this.#state, placed, this.#look.geometry);
    drawRules(pen, {
      ...placed,
      geometry: this.#look.geometry,
      startCorner: this.#open.design.startCorner,
      inks: this.#inks,
      hasTens: views.rules,
      tapePx: this.#tapePx(),
    });
    if (views.rulers) drawTapes(pen, placed, this.#look.geometry, this.#inks, settings.units);
  }

  /** Of the tapes at the edges of the screen, in CSS pixels: along the dowel there are two where both units are shown. */
  #tapePx(): Rules['tapePx'] {
    const { views, settings } = this.#state;
    if (!views.rulers) return { side: 0, top: 0 };
    return { ...tapePx, top: settings.units === 'both' ? 2 * tapePx.top : tapePx.top };
  }

  /** None where the hanging is shown as it will be. */
  #ghostNow(): StudioState['ghost'] {
    const { views, ghost } = this.#state;
    return views.finished || views.distance ? null : ghost;
  }

  #follow(): void {
    this.#forget.push(studio.subscribe((state) => state.open && this.#take(this.#seen(state), state.open)));
    const sizes = new ResizeObserver(() => this.resize());
    sizes.observe(this.#element);
    this.#followRatio();
    const theme = new MutationObserver(() => this.#takeInks());
    theme.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    // Numbers drawn before their font came are drawn again.
    document.fonts.ready.then(() => this.redraw());
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
  #take(state: StudioState, open: OpenDesign): void {
    const before = this.#state;
    const openBefore = this.#open;
    this.#state = state;
    this.#open = open;
    const { views } = state;
    const [design, designBefore] = [shownDesign(state, open), shownDesign(before, openBefore)];
    const isOtherLook =
      !cellsLookAlike(designBefore, design) ||
      views.sight !== before.views.sight ||
      views.distance !== before.views.distance ||
      cellViewOf(views) !== this.#look.view;
    if (views.sight !== before.views.sight) this.#takeInks();
    if (isOtherLook) this.#takeLook(design);
    else {
      if (!hangsAlike(designBefore, design)) this.#takeAround(design);
      if (open.chart !== openBefore.chart) this.#takeCells(openBefore);
    }
    if (before.draft.fringe && !state.draft.fringe) this.catchUp();
    if (isOtherLook || !layAlike(before, state)) this.#layOver();
    if (views.distance !== before.views.distance) {
      if (views.distance) this.goAcrossRoom();
      else this.comeBack();
    }
    if (views !== before.views || state.settings !== before.settings) this.redraw();
    if (!overlaysAlike(before, state)) {
      this.#rulesDirty = true;
      this.#ask();
    }
    if (state.ghost !== before.ghost) {
      this.#ghostDirty = true;
      this.#ask();
    }
  }

  #takeCells(before: OpenDesign): void {
    const { chart, design, touched } = this.#open;
    const blocks = changedBlocks(before.chart, chart, touched);
    for (const block of blocks) {
      this.#sheet.patch(chart, block);
      if (markBare(this.#bare, chart, block)) this.redraw();
    }
    // The veil changes also where a cell only comes from another layer.
    if (this.#over.patch(design, touched)) this.#overDirty = true;
    this.#dirty.push(...blocks);
    if (blocks.length > 0 || this.#overDirty) this.#ask();
  }

  #takeLook(design: Design): void {
    this.#look = lookOf(design, this.#state.views);
    this.#bare = bareColumns(this.#open.chart);
    this.#sheet.takeLook(this.#open.chart, this.#look, this.#state.views.distance);
    this.takeGeometry(this.#look.geometry, false);
  }

  /** The cells are as they were: only what hangs around them is drawn anew. */
  #takeAround(design: Design): void {
    this.#look = { ...this.#look, geometry: geometryOf(design) };
    this.#sheet.takeAround(this.#look);
    // While a fringe is dragged the hanging stays where it is under the pointer.
    this.takeGeometry(this.#look.geometry, this.#state.draft.fringe !== undefined);
  }

  #takeInks(): void {
    this.#inks = inksOf(this.#element, this.#state.views.sight);
    this.#layOver();
    this.redraw();
  }

  #layOver(): void {
    const { views, marked } = this.#state;
    const design = shownDesign(this.#state, this.#open);
    const layer = views.fade ? this.#open.layer : null;
    const veil = layer || marked ? { layer, marked, paper: this.#inks.paper } : null;
    const isBare = views.finished || views.distance || (!veil && !design.reference);
    this.#over.take(isBare ? null : { design, size: this.#look.geometry, veil, reference: design.reference });
    this.#overDirty = true;
    this.#ask();
  }
}

/** The design as it is shown: with what is being changed. */
function shownDesign({ draft }: StudioState, { design }: OpenDesign): Design {
  return { ...design, ...draft };
}

/** True where the same lies over the cells in both states, apart from other cells of the layers. */
function layAlike(a: StudioState, b: StudioState): boolean {
  return (
    a.views === b.views &&
    a.marked === b.marked &&
    a.draft.reference === b.draft.reference &&
    a.open?.design.reference === b.open?.design.reference &&
    (a.open?.layer === b.open?.layer || !b.views.fade)
  );
}
