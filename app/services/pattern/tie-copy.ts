/**
 * A design as one copy of its pattern ties it, with its chart, plan and figures. Where the design is still what its latest edition
 * was made of, the plan is the edition's own.
 */
import type { CancelSignal } from '../../../shared/bridge.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { type Copy, designForCopy } from '../../../shared/pattern/copy.ts';
import { editionInForce } from '../../../shared/pattern/editions/edition.ts';
import type { PatternInput } from '../../../shared/pattern/pattern-input.ts';
import { good, type Result } from '../../../shared/result.ts';
import { planWithPauses } from './plan-with-pauses.ts';

/** What a copy is made from, but for how it is printed. */
export type TiedCopy = Required<Pick<PatternInput, 'design' | 'chart' | 'plan' | 'materials' | 'edition'>>;

/** Null where it was cancelled. `onPlanned` hears the share of the plan that is made. Problems: those of the plan. */
export async function tieCopy(
  given: Design,
  copy: Pick<Copy, 'leftHanded'>,
  signal: CancelSignal | undefined,
  onPlanned?: (share: number) => void,
): Promise<Result<TiedCopy> | null> {
  const inForce = editionInForce(given, flatten(given));
  const design = designForCopy(given, copy);
  const chart = flatten(design);
  const plan =
    inForce && design === given ? good(inForce.plan) : await planWithPauses(design, chart, signal, onPlanned);
  if (!plan) return null;
  if (!plan.ok) return plan;
  const materials = materialsOf(design, chart, plan.value);
  return good({ design, chart, plan: plan.value, materials, edition: inForce?.edition ?? null });
}
