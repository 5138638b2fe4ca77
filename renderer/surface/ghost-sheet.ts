/**
 * The uppermost sheet: the ghost of what the tool would draw where the pointer is. It follows every move of the pointer,
 * so nothing else is drawn on it; while there is no ghost it is hidden.
 */
import Konva from 'konva';
import type { Strips } from '../../shared/chart/tools/strips.ts';
import { cellsInSight } from './draw-around.ts';
import { drawGhost } from './draw-ghost.ts';
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
  draw(ghost: Strips | null, { geometry, colors }: Look, { paper }: Inks, placed: Placed): void {
    const { view, widthPx, heightPx, ratio } = placed;
    const inSight = ghost && cellsInSight(view, geometry, widthPx, heightPx);
    this.layer.visible(inSight !== null);
    if (!inSight) return;
    const drawn = { ...geometry, strips: ghost, colors: colors.right, paper };
    this.#draw = (pen) => drawGhost(pen, drawn, inSight, view, geometry, ratio);
    this.layer.draw();
  }
}
