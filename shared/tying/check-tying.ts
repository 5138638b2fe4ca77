/** Can it be tied at all? A piece must hold at least one knot between its tails. */
import type { TyingSettings } from '../design/schema.ts';
import { good, problem, type Result } from '../result.ts';
import { formatLength } from '../units/length.ts';
import { toTenths } from './tenths.ts';

/** `knotMm` is the yarn of one knot, the longest where there are several yarns. Problem: `piece-too-short`. */
export function checkTying(
  { workingLengthMm, tailMm }: Pick<TyingSettings, 'workingLengthMm' | 'tailMm'>,
  knotMm: number,
): Result<null> {
  // In tenths, as the planner measures.
  if (toTenths(workingLengthMm) - 2 * toTenths(tailMm) >= toTenths(knotMm)) return good(null);
  const cm = (mm: number, enough = false) => formatLength(mm, 'metric', { enough });
  return problem(
    'piece-too-short',
    `A piece of ${cm(workingLengthMm)} can't hold one knot of ${cm(knotMm)} between two tails of ${cm(tailMm)}. ` +
      `Make the working length at least ${cm(2 * tailMm + knotMm, true)}, or the tails shorter.`,
  );
}
