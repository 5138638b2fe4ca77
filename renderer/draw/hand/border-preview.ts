/**
 * A border is shown on the chart while its options are chosen: drawn by an open stroke, afresh at each change. Drawing
 * it ends the stroke, leaving the tool drops it.
 */
import { borderStrips } from '../../../shared/chart/borders/border-strips.ts';
import type { Block } from '../../../shared/chart/patch/block.ts';
import { blockOfMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import { liftBlock } from '../../../shared/chart/patch/lift-block.ts';
import { paintStrips } from '../../../shared/chart/tools/strips.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { beginStroke, dropStroke, endStroke, stroke } from '../../store/changing.ts';
import type { Stroke } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { whyNotDraw } from './why-not-draw.ts';

/** The stroke that shows the border; any other one is none of ours. */
let shownBy: Stroke | null = null;

function isBorderShown(): boolean {
  return shownBy !== null && studio.getState().open?.stroke === shownBy;
}

/** Keeps the border shown as its options ask, until the function that is given back is called. */
export function followBorder(): () => void {
  showBorder();
  const unsubscribe = studio.subscribe((state, before) => {
    const isOther =
      state.drawing.border !== before.drawing.border ||
      state.motifs !== before.motifs ||
      state.patch !== before.patch ||
      state.open?.layer !== before.open?.layer;
    if (isOther) showBorder();
  });
  return () => {
    unsubscribe();
    hideBorder();
  };
}

/** Nothing is shown where there is no motif or the layer can't be drawn on. */
function showBorder(): void {
  const { open, drawing } = studio.getState();
  if (!open) return;
  const motif = borderMotif();
  if (!motif || whyNotDraw(open)) {
    hideBorder();
    return;
  }
  if (!isBorderShown()) {
    beginStroke('Border');
    shownBy = studio.getState().open?.stroke ?? null;
  }
  const { group, edges, insetCells, corners } = drawing.border;
  const strips = borderStrips({ group, motif, edges, insetCells, corners }, open.design);
  stroke(paintStrips(open.layer, strips, open.design), true);
}

function hideBorder(): void {
  if (isBorderShown()) dropStroke();
  shownBy = null;
}

/** Ties the border that is shown. */
export function drawBorder(): void {
  const { open } = studio.getState();
  if (!open) return;
  showBorder();
  if (!isBorderShown()) {
    tellProblem(
      whyNotDraw(open) ??
        'A border needs a motif: choose cells of this layer with Patch, or a motif from the list.',
    );
    return;
  }
  endStroke();
  shownBy = null;
}

/** The piece that the border is laid from: the chosen cells of the layer drawn on, or a motif that was kept. */
export function borderMotif(): Block | null {
  const { open, patch, motifs, drawing } = studio.getState();
  if (!open) return null;
  // Taken from below what is shown, so that a border does not grow out of its own picture.
  const design = isBorderShown() && open.stroke ? open.stroke.from : open.design;
  const kept = motifs?.find(({ id }) => id === drawing.border.motif);
  if (kept) {
    const fitted = blockOfMotif(kept, design);
    return fitted.ok && fitted.value.newYarns.length === 0 ? fitted.value.block : null;
  }
  if (!patch?.mask.bounds) return null;
  const block = liftBlock(layerOf(design, open.layer).rows, patch.mask);
  return block.cells.some((code) => code !== EMPTY) ? block : null;
}
