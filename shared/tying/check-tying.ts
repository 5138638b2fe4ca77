/** Can it be tied at all? A piece must hold at least one knot between its tails, beside what is kept free of it. */
import { good, problem, type Result } from '../result.ts';
import { formatLength } from '../units/length.ts';
import { formatPercent } from '../units/percent.ts';
import type { Units } from '../units/units.ts';
import type { PlanSettings } from './plan.ts';
import { roomOf, toTenths } from './tenths.ts';

/**
 * `knotMm` is the yarn of one knot, the longest where there are several yarns; `units` are those of the sentence. Problem:
 * `piece-too-short`.
 */
export function checkTying(
  tying: Pick<PlanSettings, 'workingLengthMm' | 'tailMm' | 'reserveShare'>,
  knotMm: number,
  units: Units = 'metric',
): Result<null> {
  // In tenths, as the planner measures.
  if (roomOf(tying) >= toTenths(knotMm)) return good(null);
  const { workingLengthMm, tailMm, reserveShare = 0 } = tying;
  const told = (mm: number, enough = false) => formatLength(mm, units, { enough });
  const reserve = reserveShare > 0 ? ` with ${formatPercent(reserveShare)} kept free` : '';
  return problem(
    'piece-too-short',
    `A piece of ${told(workingLengthMm)} can't hold one knot of ${told(knotMm)} between two tails of ${told(tailMm)}${reserve}. ` +
      `Make the working length at least ${told((2 * tailMm + knotMm) / (1 - reserveShare), true)}, or the tails shorter.`,
  );
}
