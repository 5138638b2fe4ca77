/** What a figure of the gauge rests on, as a sentence for the person. */
import { formatPercent } from '../units/percent.ts';
import type { Basis } from './fit-swatches.ts';

/** It names no ±: that stands beside the figure itself. */
export function basisSentence({ from, swatches, scatter }: Basis): string {
  if (from === 'told') return 'As you wrote it, not measured; its ± is a value from memory. Tie a swatch.';
  if (scatter === null) {
    return 'An estimate, not yet measured; its ± is a value from memory. Tie a swatch.';
  }
  const counted = swatches === 1 ? 'one swatch' : `${swatches} swatches`;
  const share = formatPercent(scatter.share, { enough: true });
  const scatters =
    scatter.from === 'prior'
      ? `that swatches scatter by ${share} is a value from memory`
      : `they scatter by ${share}`;
  if (from === 'other-thickness') {
    return `An estimate from ${counted} of another thickness; ${scatters}. Tie a swatch with this cord and yarn.`;
  }
  return `Measured on ${counted}; ${scatters}.`;
}
