import type { Mask } from '../../../shared/chart/patch/mask.ts';
import { tellProblem } from '../../shell/notices.tsx';
import type { OpenDesign } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';

export interface Chosen {
  readonly open: OpenDesign;
  readonly mask: Mask;
}

/** The chosen cells; null, with a sentence, where there are none. */
export function chosenPatch(): Chosen | null {
  const { open, patch } = studio.getState();
  if (open && patch?.mask.bounds) return { open, mask: patch.mask };
  tellProblem('No patch is chosen. Choose cells with Patch first.');
  return null;
}
