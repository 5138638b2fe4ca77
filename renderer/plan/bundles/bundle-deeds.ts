/**
 * How pieces are cut, which bundles are cut already, and which labels were printed: kept in the design. Ticks are saved with
 * it, but are no steps of the history: who undoes a stroke has not sewn a cut piece together.
 */
import { type CutPieces, cutOf } from '../../../shared/design/bundle-edits.ts';
import { apply } from '../../../shared/design/edits.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { SettledPlan } from '../../../shared/design/schema.ts';
import type { Bundle } from '../../../shared/materials/bundles/bundles.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { change, changeAside } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';

export function chooseFitted(fitted: boolean): void {
  const label = fitted ? 'Cut pieces to measure' : 'Cut pieces at the working length';
  if (designNow()) change(label, { kind: 'set-bundles', field: 'fitted', value: fitted });
}

export function tickBundle(bundle: Bundle, isCut: boolean): void {
  const design = designNow();
  if (!design) return;
  const edit = cutOf(design, bundle, isCut ? bundle.pieces.length : 0);
  if ((apply(design, edit).bundles?.cut?.length ?? 0) > limits.cutBundles) {
    tellProblem(
      `A design keeps at most ${limits.cutBundles} bundles that are cut. Untick some of them first.`,
    );
  } else changeAside(edit);
}

/** Takes what the cut list does not need off what is cut: a step that can be undone, since it is known nowhere else. */
export function forgetSpare(spare: readonly CutPieces[]): void {
  const design = designNow();
  if (!design) return;
  change('Forget pieces that are cut', {
    kind: 'together',
    edits: spare.map((each) => cutOf(design, each, 0)),
  });
}

/** `hash`: of the cut list that the labels are of; `plan`: the one that they are of, which stays in use. */
export function keepLabelled(hash: string, plan: SettledPlan): void {
  const bundles = designNow()?.bundles;
  if (!designNow() || (bundles?.labelled === hash && bundles.plan?.of === plan.of)) return;
  changeAside({ kind: 'set-bundles', field: 'labelled', value: hash });
  changeAside({ kind: 'set-bundles', field: 'plan', value: plan });
}

/** The hanging is planned anew, and labels that were printed are no longer known: a step that can be undone. */
export function forgetLabels(): void {
  if (!designNow()) return;
  change('Plan anew', {
    kind: 'together',
    edits: [
      { kind: 'set-bundles', field: 'plan', value: undefined },
      { kind: 'set-bundles', field: 'labelled', value: undefined },
    ],
  });
}

function designNow() {
  return studio.getState().open?.design;
}
