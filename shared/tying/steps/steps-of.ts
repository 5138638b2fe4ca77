/** The full tying order of a hanging as steps. */
import type { Step } from './step.ts';
import { stepsOfRow } from './steps-of-row.ts';
import type { TyingOrder } from './tying-order.ts';

/** The steps of each row, row 1 first. A screen that shows one row asks `stepsOfRow`. */
export function stepsOf(order: TyingOrder): readonly (readonly Step[])[] {
  return order.rows.map((_, row) => stepsOfRow(order, row + 1));
}
