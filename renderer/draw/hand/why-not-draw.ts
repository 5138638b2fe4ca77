import { layerOf } from '../../../shared/design/design.ts';
import type { OpenDesign } from '../../store/state.ts';

/** Why nothing can be drawn on the chosen layer, in a sentence that says what to do; null where it can. */
export function whyNotDraw({ design, layer }: Pick<OpenDesign, 'design' | 'layer'>): string | null {
  const { name, locked, visible } = layerOf(design, layer);
  if (locked) return `“${name}” is locked. Unlock it, or choose another layer.`;
  if (!visible) return `“${name}” is hidden. Show it, or choose another layer.`;
  return null;
}
