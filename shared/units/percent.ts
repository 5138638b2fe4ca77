/** Shares as a person reads them. */
import { decimal } from './round.ts';

/** '6 %', '1.5 %': of 2 % and more whole ones, below that to a tenth; up to the next step where it must be enough. */
export function formatPercent(share: number, rounding: { readonly enough?: boolean } = {}): string {
  const percent = share * 100;
  return `${decimal(percent, percent < 2 ? 0.1 : 1, rounding)} %`;
}
