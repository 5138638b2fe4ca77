/**
 * A border is shown on the chart while its options are chosen: drawn by an open stroke, afresh at each change. Drawing
 * it ends the stroke, leaving the tool drops it.
 */
import { borderStrips } from '../../../shared/chart/borders/border-strips.ts';
import { blockOfMotif, type FittedMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import { liftBlock } from '../../../shared/chart/patch/lift-block.ts';
import { paintStrips } from '../../../shared/chart/tools/strips.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { beginStroke, dropStroke, keepStroke, stroke } from '../../store/changing.ts';
import type { Stroke } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { whyNotDraw } from './why-not-draw.ts';
import { withYarns } from './with-yarns.ts';

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
      state.open?.layer !== before.open?.layer ||
      state.open?.savedAt !== before.open?.savedAt;
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
    beginStroke('Border', true);
    shownBy = studio.getState().open?.stroke ?? null;
  }
  const { group, edges, insetCells, corners } = drawing.border;
  const { block, newYarns } = motif;
  const strips = borderStrips({ group, motif: block, edges, insetCells, corners }, open.design);
  stroke(withYarns(paintStrips(open.layer, strips, open.design), newYarns), true);
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
  keepStroke();
  shownBy = null;
}

/** The piece that the border is laid from: the chosen cells of the layer drawn on, or a motif that was kept. */
export function borderMotif(): FittedMotif | null {
  const { open, patch, motifs, drawing } = studio.getState();
  if (!open) return null;
  // Taken from below what is shown, so that a border does not grow out of its own picture.
  const design = isBorderShown() && open.stroke ? open.stroke.from : open.design;
  const kept = motifs?.find(({ id }) => id === drawing.border.motif);
  if (kept) {
    const fitted = blockOfMotif(kept, design);
    return fitted.ok ? fitted.value : null;
  }
  if (!patch?.mask.bounds) return null;
  const block = liftBlock(layerOf(design, open.layer).rows, patch.mask);
  return block.cells.some((code) => code !== EMPTY) ? { block, newYarns: [] } : null;
}
