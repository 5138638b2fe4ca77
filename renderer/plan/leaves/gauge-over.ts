/** Over what length a gauge is told: 10 cm, or 4 inches where the maker measures in inches. */
import { mmPerInch } from '../../../shared/units/length.ts';
import type { Units } from '../../../shared/units/units.ts';

export function gaugeOver(units: Units): { readonly mm: number; readonly words: string } {
  return units === 'us' ? { mm: 4 * mmPerInch, words: '4 in' } : { mm: 100, words: '10 cm' };
}
