/**
 * Rounding to a step. A millionth of a step above a whole number of steps counts as that number, so that the noise
 * of binary fractions never adds a step.
 */
import { grouped } from './grouped.ts';
import type { Rounding } from './units.ts';

const noise = 1e-6;

/** Whole steps in `value`: the nearest number, the next that is enough, or those that are surely there. */
export function wholeSteps(
  value: number,
  step: number,
  { enough = false, spare = false }: Rounding = {},
): number {
  const steps = value / step;
  // Rounding up what is just below 0 gives -0, which is no count.
  if (enough) return Math.ceil(steps - noise) + 0;
  return Math.floor(steps + (spare ? 0 : 0.5) + noise);
}

/** `value` as a decimal number in steps of `step`, without zeros at the end: '34.5', '35', '1,080'. */
export function decimal(value: number, step: number, rounding: Rounding = {}): string {
  const digits = Math.max(0, -Math.floor(Math.log10(step) + noise));
  return grouped(String(Number((wholeSteps(value, step, rounding) * step).toFixed(digits))));
}
