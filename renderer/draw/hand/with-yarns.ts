import type { Edit, Paint } from '../../../shared/design/edits.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import { studio } from '../../store/studio.ts';

/**
 * Cells drawn in yarns that the design may lack: those come with the cells and go with them. The yarns are added to what
 * the design had before the stroke that is open.
 */
export function withYarns(paint: Paint | null, more: readonly Yarn[]): Edit | null {
  const { open } = studio.getState();
  if (!paint || !open || more.length === 0) return paint;
  const { yarns } = open.stroke?.from ?? open.design;
  return { kind: 'together', edits: [{ kind: 'set', field: 'yarns', value: [...yarns, ...more] }, paint] };
}
