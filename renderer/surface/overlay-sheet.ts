/**
 * The uppermost sheet: the symmetry's axes, the chosen patch's outline, and the ghost of what the tool would draw. It
 * is hidden while there is none of them, and drawn again only when one of them or the view changes.
 */
import Konva from 'konva';
import { axesOf } from '../../shared/chart/symmetry/axes.ts';
import type { StudioState } from '../store/state.ts';
import { cellsInSight } from './draw-around.ts';
import { drawAxes } from './draw-axes.ts';
import { drawGhost } from './draw-ghost.ts';
import { drawPatch } from './draw-patch.ts';
import type { Inks, Look } from './look.ts';
import type { Placed } from './placed.ts';

export class OverlaySheet {
  readonly layer = new Konva.Layer({ listening: false, visible: false });
  #draw: (pen: CanvasRenderingContext2D) => void = () => {};

  constructor() {
    const sceneFunc = (context: Konva.Context) => this.#draw(context._context);
    this.layer.add(new Konva.Shape({ listening: false, perfectDrawEnabled: false, sceneFunc }));
  }

  draw(state: StudioState, look: Look, inks: Inks, { view, widthPx, heightPx, ratio }: Placed): void {
    const { geometry } = look;
    const inSight = cellsInSight(view, geometry, widthPx, heightPx);
    const isShown = inSight !== null && hasOverlays(state);
    this.layer.visible(isShown);
    if (!isShown) return;
    const { drawing, patch, ghost } = state;
    this.#draw = (pen) => {
      if (ghost) {
        const drawn = { ...geometry, strips: ghost, colors: look.colors.right, paper: inks.paper };
        drawGhost(pen, drawn, inSight, view, geometry, ratio);
      }
      drawAxes(pen, axesOf(drawing.symmetry, geometry), view, geometry, ratio);
      if (patch) drawPatch(pen, patch.mask, inSight, view, geometry, ratio);
    };
    this.layer.draw();
  }
}

/** True where the two states show the same overlays. */
export function overlaysAlike(a: StudioState, b: StudioState): boolean {
  return (
    a.patch === b.patch &&
    a.ghost === b.ghost &&
    a.drawing.symmetry === b.drawing.symmetry &&
    a.views === b.views
  );
}

function hasOverlays({ patch, ghost, drawing, views }: StudioState): boolean {
  const { point, repeat } = drawing.symmetry;
  if (views.finished || views.distance) return false;
  return patch !== null || ghost !== null || point !== 'none' || repeat !== 'none';
}
