/** What a figure of the gauge rests on, as a sentence for the person. */
import { formatPercent } from '../units/percent.ts';
import type { Basis, Fit } from './fit-swatches.ts';
import { normalQuantile95 } from './t-quantile.ts';

const enough = { enough: true };

/** `fit`: the quantity that the basis is told of. */
export function basisSentence(
  { from, swatches, scatter }: Basis,
  { errorShare }: Pick<Fit, 'errorShare'>,
): string {
  if (scatter === null) {
    return `An estimate, not yet measured: ± ${formatPercent(normalQuantile95 * errorShare, enough)} is a value from memory. Tie a swatch.`;
  }
  const counted = swatches === 1 ? 'one swatch' : `${swatches} swatches`;
  const share = formatPercent(scatter.share, enough);
  const scatters =
    scatter.from === 'prior'
      ? `that swatches scatter by ${share} is a value from memory`
      : `they scatter by ${share}`;
  if (from === 'other-thickness') {
    return `An estimate from ${counted} of another thickness; ${scatters}. Tie a swatch with this cord and yarn.`;
  }
  return `Measured on ${counted}; ${scatters}.`;
}
