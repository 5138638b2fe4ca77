/**
 * Lengths of hangings and dowels as a maker measures them: cm, or inches in fractions. What is cut is in
 * `cut-length.ts`, yarn by the metre in `yarn-length.ts`, thickness in `thickness.ts`.
 */
import { fraction } from './fraction.ts';
import { decimal } from './round.ts';
import { inUnits, type Rounding, type Units } from './units.ts';

/** Exact: international yard and pound agreement, 1959. */
export const mmPerInch = 25.4;
export const mmPerYard = 914.4;

/**
 * '34.2 cm', '13 1/2 in'. Rounded to the nearest 1 mm or 1/8 in; where it is spare, down to it; where it must be enough,
 * up to the next 5 mm or 1/4 in. Below 1 cm it is in mm, to 0.1 mm, and below 1 in to 1/16 in.
 */
export function formatLength(mm: number, units: Units, rounding: Rounding = {}): string {
  const { enough = false } = rounding;
  return inUnits(
    units,
    () =>
      mm < 10 ? `${decimal(mm, 0.1, rounding)} mm` : `${decimal(mm / 10, enough ? 0.5 : 0.1, rounding)} cm`,
    () => {
      const inches = mm / mmPerInch;
      const parts = inches < 1 ? 16 : enough ? 4 : 8;
      return `${fraction(inches, parts, rounding)} in`;
    },
  );
}
