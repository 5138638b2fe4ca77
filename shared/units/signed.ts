import { inUnits, type Units } from './units.ts';

const same = 'same';

/** '+4', '−1.2 m', 'same': by how much a figure differs from another. `shown` writes the size of it. */
export function signed(by: number, shown: (size: number) => string): string {
  const size = shown(Math.abs(by));
  // What the noise of binary fractions leaves is nothing.
  if (size === shown(0)) return same;
  return `${by > 0 ? '+' : '−'}${size}`;
}

/** A difference in the units asked for; where it is none in either, that is said once. */
export function signedInUnits(units: Units, metric: () => string, us: () => string): string {
  const isNone = units === 'both' && metric() === same && us() === same;
  return isNone ? same : inUnits(units, metric, us);
}
