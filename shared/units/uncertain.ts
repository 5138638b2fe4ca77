import { formatPercent } from './percent.ts';

/** A figure that is known only so well. `low` and `high` hold the truth in 95 of 100 cases. */
export interface Uncertain {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Half of the interval against the value: 0.06 is ± 6 %; 0 where the value is 0. */
  readonly share: number;
}

export function uncertain(value: number, low: number, high: number): Uncertain {
  return { value, low, high, share: value === 0 ? 0 : (high - low) / 2 / value };
}

/** Figures that all err alike, since one hand ties them all: their intervals add up, they don't average out. */
export function sumOfUncertain(all: readonly Uncertain[]): Uncertain {
  const sum = (end: 'value' | 'low' | 'high') => all.reduce((so, each) => so + each[end], 0);
  return uncertain(sum('value'), sum('low'), sum('high'));
}

/**
 * '18.4 m ± 6 %': `show` writes the figure itself, in whatever units. The share is rounded up, so that no figure seems
 * surer than it is; a figure that does not depend on the gauge has none.
 */
export function formatUncertain({ value, share }: Uncertain, show: (value: number) => string): string {
  return share === 0 ? show(value) : `${show(value)} ± ${formatPercent(share, { enough: true })}`;
}
