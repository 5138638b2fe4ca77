/** Where the maker is, from the number of knots that are tied. */
import type { KnotsStep } from './step.ts';
import { stepsOfRow } from './steps-of-row.ts';
import type { TyingOrder } from './tying-order.ts';

export interface StepAt {
  readonly step: KnotsStep;
  /** Knots of this step that are tied already. */
  readonly done: number;
}

/** The step of the next knot, where `knots` are tied; null where all are. */
export function stepAt(order: TyingOrder, knots: number): StepAt | null {
  const row = rowOfKnot(order.knotsBefore, knots);
  if (row === null) return null;
  for (const step of stepsOfRow(order, row)) {
    if (step.kind === 'knots' && knots < step.knotsBefore + step.count) {
      return { step, done: knots - step.knotsBefore };
    }
  }
  throw new Error(`row ${row} does not tie its knots`);
}

/** The row, from 1, of the knot before which so many are tied. */
function rowOfKnot(knotsBefore: Uint32Array, knots: number): number | null {
  if (knots < 0 || knots >= knotsBefore.at(-1)!) return null;
  let low = 0;
  let high = knotsBefore.length - 1;
  // The knot is always in a row from `low` up to, but not including, `high`.
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (knotsBefore[middle]! <= knots) low = middle;
    else high = middle;
  }
  return low + 1;
}
