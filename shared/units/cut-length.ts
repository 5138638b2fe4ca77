/**
 * How long a piece of yarn, a cord or a tail is cut: a length that is laid along a tape. So it is told to the mark of the
 * tape, not coarser, for the maker's own setting of 152.4 cm must not become another figure on paper.
 */
import { fraction } from './fraction.ts';
import { mmPerInch } from './length.ts';
import { decimal } from './round.ts';
import { inUnits, type Units } from './units.ts';

/** '152.4 cm', '60 in': up to the next mm, or quarter of an inch; below 1 cm to 0.1 mm, below 1 in to 1/16 in. */
export function formatCutLength(mm: number, units: Units): string {
  const enough = { enough: true };
  return inUnits(
    units,
    () => (mm < 10 ? `${decimal(mm, 0.1, enough)} mm` : `${decimal(mm / 10, 0.1, enough)} cm`),
    () => `${fraction(mm / mmPerInch, mm < mmPerInch ? 16 : 4, enough)} in`,
  );
}
