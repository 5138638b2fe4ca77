/** The design's prices in the currency of the settings, where the design does not tell its own. */
import type { Design } from '../../../shared/design/design.ts';

/** `currency`: empty where none is set. */
export function moneyHere<D extends Pick<Design, 'money'>>(design: D, currency: string): D {
  return currency ? { ...design, money: { currency, ...design.money } } : design;
}
