/** Lengths of yarn and rope as they are bought: metres, or yards. */
import { mmPerYard } from './length.ts';
import { decimal, wholeSteps } from './round.ts';
import { signed, signedInUnits } from './signed.ts';
import { inUnits, type Rounding, type Units } from './units.ts';

/** '43.2 m', '47.2 yd': to 0.1 below 100 m or yd, whole ones from there; up to the next step where it must be enough. */
export function formatYarnLength(mm: number, units: Units, rounding: Rounding = {}): string {
  const coarse = (count: number) => decimal(count, stepOf(count), rounding);
  return inUnits(
    units,
    () => `${coarse(mm / 1000)} m`,
    () => `${coarse(mm / mmPerYard)} yd`,
  );
}

/** '+1.2 m', 'same': how the second differs from the first, as both are shown with this rounding. */
export function yarnLengthDifference(
  beforeMm: number,
  afterMm: number,
  units: Units,
  rounding: Rounding = {},
): string {
  const differs = (mmEach: number, unit: string) =>
    signed(
      asShown(afterMm / mmEach, rounding) - asShown(beforeMm / mmEach, rounding),
      (count) => `${decimal(count, 0.1)} ${unit}`,
    );
  return signedInUnits(
    units,
    () => differs(1000, 'm'),
    () => differs(mmPerYard, 'yd'),
  );
}

/** The metres that are shown: whoever reckons on with them gets what a reader gets. */
export function metresAsShown(mm: number, rounding: Rounding = {}): number {
  return asShown(mm / 1000, rounding);
}

function asShown(count: number, rounding: Rounding): number {
  const step = stepOf(count);
  return Number((wholeSteps(count, step, rounding) * step).toFixed(1));
}

function stepOf(count: number): number {
  return count < 100 ? 0.1 : 1;
}
