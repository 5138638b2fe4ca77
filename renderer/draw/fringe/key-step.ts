import { mmPerInch } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';

/** What one key press adds to a length, in mm: 5 mm, or a quarter of an inch. */
export function keyStepMm(units: Units): number {
  return units === 'us' ? mmPerInch / 4 : 5;
}
