/**
 * The uppermost sheet: the ghost of what the tool would draw where the pointer is. It follows every move of the pointer,
 * so nothing else is drawn on it; while there is no ghost it is hidden.
 */
import Konva from 'konva';
import type { Strips } from '../../shared/chart/tools/strips.ts';
import { cellsInSight } from './draw-around.ts';
import { drawGhost } from './draw-ghost.ts';
import { insideStrips, type Rules } from './draw-rules.ts';
import type { Inks, Look } from './look.ts';
import type { Placed } from './placed.ts';

export class GhostSheet {
  readonly layer = new Konva.Layer({ listening: false, visible: false });
  #draw: (pen: CanvasRenderingContext2D) => void = () => {};

  constructor() {
    const sceneFunc = (context: Konva.Context) => this.#draw(context._context);
    this.layer.add(new Konva.Shape({ listening: false, perfectDrawEnabled: false, sceneFunc }));
  }

  /** Null: there is none. */
  draw(
    ghost: Strips | null,
    { geometry, colors }: Look,
    { paper }: Inks,
    placed: Placed,
    tapePx: Rules['tapePx'],
  ): void {
    const { view, widthPx, heightPx, ratio } = placed;
    const inSight = ghost && cellsInSight(view, geometry, widthPx, heightPx);
    this.layer.visible(inSight !== null);
    if (!inSight) return;
    const drawn = { ...geometry, strips: ghost, colors: colors.right, paper };
    const { left, right, upper } = insideStrips(view, { geometry, widthPx, ratio, tapePx });
    this.#draw = (pen) => {
      pen.save();
      pen.beginPath();
      pen.rect(left, upper, right - left, heightPx - upper);
      pen.clip();
      drawGhost(pen, drawn, inSight, view, geometry, ratio);
      pen.restore();
    };
    this.layer.draw();
  }
}
