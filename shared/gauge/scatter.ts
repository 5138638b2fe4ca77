/**
 * How far swatches of one maker differ from one another: a relative standard deviation, the same for widths, heights
 * and yarn. Two swatches tell little about it, so a prior is weighed in: a value from memory (1.5 %) that counts like
 * `priorDegrees` measurements of its own. With one swatch it is all there is; with many it no longer matters.
 *
 * With s0 the prior, n0 its weight, and the squares R of what is measured from its own mean, n of them free:
 *   s^2 = (n0 s0^2 + R) / (n0 + n)
 * Only the part of R varies by chance, so the interval takes Student's t with (n0 + n)^2 / n degrees of freedom: those
 * of a variance of which a part is known (Welch 1947, Biometrika 34, 28-35; Satterthwaite 1946, Biometrics 2, 110-114).
 * A test with simulated makers holds the intervals to what they claim.
 */
import { normalQuantile95, tQuantile95 } from './t-quantile.ts';

export interface Scatter {
  /** Relative standard deviation of one measurement: 0.015 is 1.5 %. */
  readonly share: number;
  /** Standard errors on both sides that hold the truth in 95 of 100 cases. */
  readonly quantile: number;
  /** 'prior' where no measurement was repeated, so that it is the value from memory alone. */
  readonly from: 'swatches' | 'prior';
}

/** Value from memory, to be measured: what two swatches of the same maker differ by, as a share. */
const priorScatter = 0.015;
const priorDegrees = 3;

/** `groups`: for each quantity its measurements as natural logarithms, each group with a mean of its own. */
export function scatterOf(groups: readonly (readonly number[])[]): Scatter {
  let squares = 0;
  let free = 0;
  for (const logs of groups) {
    if (logs.length < 2) continue;
    const mean = meanOf(logs);
    for (const log of logs) squares += (log - mean) ** 2;
    free += logs.length - 1;
  }
  if (free === 0) return { share: priorScatter, quantile: normalQuantile95, from: 'prior' };
  const degrees = (priorDegrees + free) ** 2 / free;
  return {
    share: Math.sqrt((priorDegrees * priorScatter ** 2 + squares) / (priorDegrees + free)),
    quantile: tQuantile95(degrees),
    from: 'swatches',
  };
}

export function meanOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
}
