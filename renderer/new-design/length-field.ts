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

/** Thickness of cords, yarns and dowels: mm, or thousandths of an inch, as a caliper has them. */
export function thicknessUnit(units: Units): string {
  return units === 'us' ? 'inches' : 'mm';
}

export function thicknessIn(mm: number, units: Units): number {
  return units === 'us' ? mm / mmPerInch : mm;
}

export function mmFromThickness(value: number, units: Units): number {
  return units === 'us' ? value * mmPerInch : value;
}
