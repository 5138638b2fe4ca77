/**
 * One more sheet on the chart's stage, above all others: what the Plan screen shows over the chart. Only what is in
 * sight is drawn, once a frame at most.
 */
import Konva from 'konva';
import { cellsInSight } from '../../surface/draw-around.ts';
import { insideStrips } from '../../surface/draw-rules.ts';
import type { Placed } from '../../surface/placed.ts';
import type { Surface } from '../../surface/surface.ts';
import { drawOverlay } from './draw-overlay.ts';
import type { Overlay } from './overlay.ts';

export class PlanSheet {
  readonly #surface: Surface;
  readonly #stage: Konva.Stage;
  readonly #layer = new Konva.Layer({ listening: false });
  readonly #forget: () => void;
  #overlay: Overlay | null = null;
  #frame = 0;

  constructor(surface: Surface, stage: Konva.Stage) {
    this.#surface = surface;
    this.#stage = stage;
    const sceneFunc = (context: Konva.Context) => this.#paint(context._context);
    this.#layer.add(new Konva.Shape({ listening: false, perfectDrawEnabled: false, sceneFunc }));
    stage.add(this.#layer);
    this.#forget = surface.onView(() => this.#ask());
  }

  /** What is shown from now on; null: nothing. */
  show(overlay: Overlay | null): void {
    this.#overlay = overlay;
    this.#ask();
  }

  destroy(): void {
    this.#forget();
    cancelAnimationFrame(this.#frame);
  }

  #ask(): void {
    if (this.#frame !== 0) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.#layer.draw();
    });
  }

  #paint(pen: CanvasRenderingContext2D): void {
    if (!this.#overlay) return;
    const { geometry, view } = this.#surface;
    const { columns, rows } = this.#overlay.planned.tables;
    // A plan of the size before is still shown until the next one comes.
    if (columns !== geometry.columns || rows !== geometry.rows) return;
    const [widthPx, heightPx] = [this.#stage.width(), this.#stage.height()];
    const inSight = cellsInSight(view, geometry, widthPx, heightPx);
    if (!inSight) return;
    const ratio = window.devicePixelRatio || 1;
    const placed: Placed = { view, widthPx, heightPx, ratio, isZooming: false };
    // The strips of paper on which numbers stand at the screen's edges stay free.
    const { left, right, upper } = insideStrips(view, {
      geometry,
      widthPx,
      ratio,
      tapePx: { side: 0, top: 0 },
    });
    pen.save();
    pen.beginPath();
    pen.rect(left, upper, right - left, heightPx - upper);
    pen.clip();
    drawOverlay(pen, { ...this.#overlay, placed, size: geometry, inSight, rightPx: right });
    pen.restore();
  }
}
