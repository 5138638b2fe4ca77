/** What is done with the fringe: shown while it is being shaped, and one step of the history when that ends. */
import type { Fringe } from '../../../shared/design/schema.ts';
import { fringeByHand, fringeMm } from '../../../shared/gauge/fringe.ts';
import { change } from '../../store/changing.ts';
import type { StudioState } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';

/** The fringe that is shown: the one being shaped, or the design's; null where no design is open. */
export function shownFringe({ open, draft }: StudioState): Fringe | null {
  return open && (draft.fringe ?? open.design.fringe);
}

/** Shows a fringe that is still being shaped. */
export function tryFringe(fringe: Fringe): void {
  studio.setState({ draft: { ...studio.getState().draft, fringe } });
}

/** Makes what was tried a step of the history. */
export function keepFringe(): void {
  const { open, draft } = studio.getState();
  if (!draft.fringe) return;
  const { fringe, ...rest } = draft;
  if (open && fringe !== open.design.fringe)
    change('Fringe', { kind: 'set', field: 'fringe', value: fringe });
  studio.setState({ draft: rest });
}

/** Forgets what was tried. */
export function dropFringe(): void {
  const { fringe: _, ...rest } = studio.getState().draft;
  studio.setState({ draft: rest });
}

export function setFringe(fringe: Fringe): void {
  tryFringe(fringe);
  keepFringe();
}

/**
 * Shows another shape, made from the fringe that is kept, so that shapes passed on the way by keys leave nothing behind.
 * By hand it begins with the lengths that the cords have.
 */
export function chooseShape(shape: Fringe['shape']): void {
  const design = studio.getState().open?.design;
  if (!design) return;
  const { columns, fringe } = design;
  if (fringe.shape === shape) dropFringe();
  else if (shape === 'by-hand') tryFringe(fringeByHand(fringeMm(columns, fringe).map(Math.round)));
  else {
    const { byHandMm: _, ...lengths } = fringe;
    tryFringe({ ...lengths, shape, shortMm: shape === 'straight' ? fringe.longMm : fringe.shortMm });
  }
}
