/** Thickness of cords, yarns and dowels: mm, or inches in fractions, as their labels have it. */
import { fraction } from './fraction.ts';
import { mmPerInch } from './length.ts';
import { decimal } from './round.ts';
import { inUnits, type Units } from './units.ts';

/** '3 mm', '1/8 in': to the nearest 0.1 mm; to 1/64 in below a quarter inch and 1/16 in above. */
export function formatThickness(mm: number, units: Units): string {
  return inUnits(
    units,
    () => `${decimal(mm, 0.1)} mm`,
    () => `${fraction(mm / mmPerInch, mm < mmPerInch / 4 ? 64 : 16)} in`,
  );
}
