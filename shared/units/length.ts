/**
 * Lengths of hangings and dowels as a maker measures them: cm, or inches in fractions. What is cut is in
 * `cut-length.ts`, yarn by the metre in `yarn-length.ts`, thickness in `thickness.ts`.
 */
import { fraction } from './fraction.ts';
import { decimal, wholeSteps } from './round.ts';
import { signed, signedInUnits } from './signed.ts';
import { inUnits, type Rounding, type Units } from './units.ts';

/** Exact: international yard and pound agreement, 1959. */
export const mmPerInch = 25.4;
export const mmPerYard = 914.4;

/**
 * '34.2 cm', '13 1/2 in'. Rounded to the nearest 1 mm or 1/8 in; where it is spare, down to it; where it must be enough,
 * up to the next 5 mm or 1/4 in. Below 1 cm it is in mm, to 0.1 mm, and below 1 in to 1/16 in.
 */
export function formatLength(mm: number, units: Units, rounding: Rounding = {}): string {
  return inUnits(
    units,
    () => metric(mmAsShown(mm, rounding)),
    () => {
      const inches = mm / mmPerInch;
      return `${fraction(inches, inchParts(inches, rounding), rounding)} in`;
    },
  );
}

/** '+2.4 cm', '−1/8 in', 'same': how the second differs from the first, as both are shown with this rounding. */
export function lengthDifference(
  beforeMm: number,
  afterMm: number,
  units: Units,
  rounding: Rounding = {},
): string {
  const inches = (mm: number) => inchesAsShown(mm / mmPerInch, rounding);
  return signedInUnits(
    units,
    () =>
      signed(
        mmAsShown(afterMm, rounding) - mmAsShown(beforeMm, rounding),
        (mm) => `${decimal(mm / 10, 0.01)} cm`,
      ),
    () => signed(inches(afterMm) - inches(beforeMm), (inch) => `${fraction(inch, 16)} in`),
  );
}

function metric(mm: number): string {
  return mm < 10 ? `${decimal(mm, 0.1)} mm` : `${decimal(mm / 10, 0.1)} cm`;
}

function mmAsShown(mm: number, rounding: Rounding): number {
  const step = mm < 10 ? 0.1 : rounding.enough ? 5 : 1;
  return wholeSteps(mm, step, rounding) * step;
}

function inchesAsShown(inches: number, rounding: Rounding): number {
  const parts = inchParts(inches, rounding);
  return wholeSteps(inches, 1 / parts, rounding) / parts;
}

/** In how many parts of an inch it is shown. */
function inchParts(inches: number, { enough = false }: Rounding): number {
  return inches < 1 ? 16 : enough ? 4 : 8;
}
