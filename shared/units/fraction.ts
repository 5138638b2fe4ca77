/** Numbers in halves, quarters and so on, as they stand on a ruler in inches: '13 1/2', '3/8', '2'. */
import { grouped } from './grouped.ts';
import { wholeSteps } from './round.ts';
import type { Rounding } from './units.ts';

/** `value` in steps of 1 / `parts`, where `parts` is a power of two; the fraction is in its lowest terms. */
export function fraction(value: number, parts: number, rounding: Rounding = {}): string {
  const steps = wholeSteps(value, 1 / parts, rounding);
  const whole = Math.floor(steps / parts);
  let top = steps % parts;
  let bottom = parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const wholes = grouped(String(whole));
  if (top === 0) return wholes;
  return whole === 0 ? `${top}/${bottom}` : `${wholes} ${top}/${bottom}`;
}
