/** The steps of the whole tying order as a list: all of them, or only those of one yarn or one strand. */
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Step } from '../../../shared/tying/steps/step.ts';
import { stepsOfRow } from '../../../shared/tying/steps/steps-of-row.ts';
import type { TyingOrder } from '../../../shared/tying/steps/tying-order.ts';

/** Which steps are listed. */
export interface OrderWish {
  /** Null: those of all yarns. */
  readonly yarn: YarnId | null;
  /** Its place among the plan's strands, from 1. Null: those of all strands. */
  readonly strand: number | null;
}

export const wholeOrder: OrderWish = { yarn: null, strand: null };

/** The row's own step, and those of its steps that are asked for. `row` counts from 1. */
export function listedSteps(order: TyingOrder, row: number, wish: OrderWish): readonly Step[] {
  return stepsOfRow(order, row).filter((step) => step.kind === 'row' || isOf(step, wish));
}

/**
 * How many steps are listed of each row, row 1 first, the row's own left out: what a list has to make room for. -1 where
 * the row is left out, since it has none of the steps that are asked for; of the whole order no row is.
 */
export function listedCounts(order: TyingOrder, wish: OrderWish): Int32Array {
  const isWhole = wish.yarn === null && wish.strand === null;
  return Int32Array.from(order.rows, (_, r) => {
    const count = listedSteps(order, r + 1, wish).length - 1;
    return count === 0 && !isWhole ? -1 : count;
  });
}

function isOf(step: Exclude<Step, { readonly kind: 'row' }>, { yarn, strand }: OrderWish): boolean {
  return (yarn === null || step.yarn === yarn) && (strand === null || step.strand === strand);
}
