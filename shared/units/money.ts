/** Amounts of the maker's own money. `currency` is the money's code by ISO 4217, where it is told. */
import { grouped } from './grouped.ts';
import { minorUnitPlaces } from './minor-unit.ts';
import { signed } from './signed.ts';

/** '13.50', '1,080.00 EUR', '1,080 JPY': to the minor unit. */
export function formatMoney(amount: number, currency?: string): string {
  return inPlaces(amount, minorUnitPlaces(currency), currency);
}

/** '+1.20', 'same': how the second differs from the first, as both are shown. */
export function moneyDifference(before: number, after: number, currency?: string): string {
  const by = roundMoney(after, currency) - roundMoney(before, currency);
  return signed(by, (amount) => formatMoney(amount, currency));
}

/**
 * '0.40 EUR', '0.395 EUR': what one of something costs, which may be told finer than any sum can be paid. It has as many
 * places as it needs, up to `most`, and at least those of the minor unit.
 */
export function formatPrice(price: number, most: number, currency?: string): string {
  const least = minorUnitPlaces(currency);
  const [, needed = ''] = String(Number(price.toFixed(most))).split('.');
  return inPlaces(price, Math.max(least, needed.length), currency);
}

/** To the minor unit, as it is shown and paid; half of one goes up. */
export function roundMoney(amount: number, currency?: string): number {
  return rounded(amount, minorUnitPlaces(currency));
}

function inPlaces(amount: number, places: number, currency: string | undefined): string {
  const figure = grouped(rounded(amount, places).toFixed(places));
  return currency === undefined ? figure : `${figure} ${currency}`;
}

/** A millionth of a unit below a half counts as that half. */
function rounded(amount: number, places: number): number {
  const units = 10 ** places;
  return Math.round(amount * units + 1e-6) / units;
}
