import type { Step } from '../../../shared/tying/steps/step.ts';
import { stepsOfRow } from '../../../shared/tying/steps/steps-of-row.ts';
import type { TyingOrder } from '../../../shared/tying/steps/tying-order.ts';

/** Steps shown beside the slider. */
const most = 5;

/**
 * What is done next where so many knots are tied: the rest of the row at hand, and of the next one where little is
 * left. What comes right after a knot, such as leaving a strand, is still to be done; and so are knots tied in part.
 */
export function nextSteps(order: TyingOrder, knots: number): Step[] {
  const { knotsBefore } = order;
  const all = knotsBefore.at(-1)!;
  if (knots >= all) return [];
  const next: Step[] = [];
  let row = Math.max(
    1,
    knotsBefore.findIndex((before) => before >= knots),
  );
  for (; row <= order.rows.length && next.length < most; row++)
    next.push(...stepsOfRow(order, row).filter((step) => isDue(step, knots)));
  return next.slice(0, most);
}

function isDue(step: Step, knots: number): boolean {
  if (step.kind === 'knots') return step.knotsBefore + step.count > knots;
  const isBareRow = step.kind === 'row' && step.knots === 0;
  return step.knotsBefore >= knots && !isBareRow;
}
