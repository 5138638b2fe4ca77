import { axesOf } from '../../shared/chart/symmetry/axes.ts';
import type { StudioState } from '../store/state.ts';
import { cellsInSight } from './draw-around.ts';
import { drawAxes } from './draw-axes.ts';
import { drawPatch } from './draw-patch.ts';
import type { Placed } from './placed.ts';
import type { CellSize } from './view.ts';

/** What the tools show over the chart while nothing is drawn: the symmetry's axes, and the chosen patch's outline. */
export function drawOverlays(
  pen: CanvasRenderingContext2D,
  { open, drawing, patch }: StudioState,
  { view, widthPx, heightPx, ratio }: Placed,
  size: CellSize,
): void {
  if (!open) return;
  drawAxes(pen, axesOf(drawing.symmetry, open.design), view, size, ratio);
  const inSight = cellsInSight(view, { ...size, ...open.design }, widthPx, heightPx);
  if (patch && inSight) drawPatch(pen, patch.mask, inSight, view, size, ratio);
}

/** True where the two states show the same of these. */
export function overlaysAlike(a: StudioState, b: StudioState): boolean {
  return a.patch === b.patch && a.drawing.symmetry === b.drawing.symmetry;
}
