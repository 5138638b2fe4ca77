/** Amounts of the maker's own money. */

import { grouped } from './grouped.ts';

/** '13.50', '1,080.00 EUR': to the hundredth. `currency` is the money's code by ISO 4217, where it is told. */
export function formatMoney(amount: number, currency?: string): string {
  const figure = grouped((Math.round(amount * 100 + 1e-6) / 100).toFixed(2));
  return currency === undefined ? figure : `${figure} ${currency}`;
}
