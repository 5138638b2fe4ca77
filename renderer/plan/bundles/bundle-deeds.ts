/** How pieces are cut, which bundles are cut already, and which labels were printed: kept in the design. */
import { limits } from '../../../shared/design/limits.ts';
import type { BundleSettings } from '../../../shared/design/schema.ts';
import type { Bundle } from '../../../shared/materials/bundles/bundles.ts';
import { type CutPieces, withCut } from '../../../shared/materials/bundles/cut-so-far.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';

export function chooseFitted(fitted: boolean): void {
  keep(fitted ? 'Cut pieces to measure' : 'Cut pieces at the working length', { fitted });
}

export function tickBundle(bundle: Bundle, isCut: boolean): void {
  const cut = withCut(bundlesNow().cut ?? [], bundle, isCut ? bundle.pieces.length : 0);
  if (cut.length > limits.cutBundles) {
    tellProblem(
      `A design keeps at most ${limits.cutBundles} bundles that are cut. Untick some of them first.`,
    );
  } else keep(isCut ? 'Tick a bundle' : 'Untick a bundle', { cut });
}

/** Takes what the cut list does not need off what is cut. */
export function forgetSpare(spare: readonly CutPieces[]): void {
  const cut = (bundlesNow().cut ?? []).filter(
    (each) => !spare.some(({ yarn, cutMm }) => each.yarn === yarn && each.cutMm === cutMm),
  );
  keep('Forget pieces that are cut', { cut });
}

/** `hash`: of the cut list that the labels are of. */
export function keepLabelled(hash: string): void {
  if (bundlesNow().labelled !== hash) keep('Remember the printed labels', { labelled: hash });
}

function bundlesNow(): BundleSettings {
  return studio.getState().open?.design.bundles ?? {};
}

function keep(label: string, next: BundleSettings): void {
  if (studio.getState().open)
    change(label, { kind: 'set', field: 'bundles', value: { ...bundlesNow(), ...next } });
}
