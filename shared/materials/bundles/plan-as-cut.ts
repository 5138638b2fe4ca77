/**
 * The plan with its pieces as the maker cuts them: each to measure where the design says so, else all at the working
 * length. What is bought is what is cut, so materials, bundles, labels and the published plan all begin here.
 */
import type { BundleSettings } from '../../design/schema.ts';
import type { PlainPlan } from '../../tying/plan.ts';
import { fittedPlan, usualFitting } from './fitted-plan.ts';

export function planAsCut<P extends PlainPlan>(
  design: { readonly bundles?: BundleSettings | undefined },
  plan: P,
): P {
  return design.bundles?.fitted ? fittedPlan(plan, usualFitting) : plan;
}
