/** Lengths as a maker writes them: cm, or inches where the settings say US. */
import type { Settings } from '../../shared/bridge.ts';
import { mmPerInch } from '../../shared/units/length.ts';

type Units = Settings['units'];

export function lengthUnit(units: Units): string {
  return units === 'us' ? 'inches' : 'cm';
}

export function lengthIn(mm: number, units: Units): number {
  return units === 'us' ? mm / mmPerInch : mm / 10;
}

export function mmFrom(value: number, units: Units): number {
  return units === 'us' ? value * mmPerInch : value * 10;
}
