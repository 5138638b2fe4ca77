/**
 * A gauge that the maker writes down without a swatch: so many knots and so many rows in 10 cm. It stands among the
 * swatches, marked as told, and gives the size in their place until it is taken away; they stay as they were measured.
 * The yarn in a knot and the take-up of cord still come from them.
 */
import { limits } from '../design/limits.ts';
import type { Swatch } from '../design/schema.ts';
import { gaugeFromPer10Cm } from './gauge-from-per-10-cm.ts';

/** The one in force; null where there is none. */
export function toldGauge(swatches: readonly Swatch[]): Swatch | null {
  return swatches.find(({ told }) => told) ?? null;
}

export function measuredSwatches(swatches: readonly Swatch[]): Swatch[] {
  return swatches.filter(({ told }) => !told);
}

/** Whether one more entry has room beside the swatches, or takes the place of one that is told already. */
export function hasRoomForTold(swatches: readonly Swatch[]): boolean {
  return measuredSwatches(swatches).length < limits.swatches;
}

/** The swatches with this gauge told, in place of one that was told before. */
export function withToldGauge(
  swatches: readonly Swatch[],
  knotsPer10Cm: number,
  rowsPer10Cm: number,
): Swatch[] {
  return [...measuredSwatches(swatches), { ...gaugeFromPer10Cm(knotsPer10Cm, rowsPer10Cm), told: true }];
}
