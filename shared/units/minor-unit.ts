/** How many decimal places an amount of money has: its minor unit, such as the cent, by ISO 4217. */

/** Codes whose minor unit is not the hundredth, by its decimal places. Funds and units of account are left out. */
const others: Readonly<Record<number, readonly string[]>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'.split(' '),
  3: 'BHD IQD JOD KWD LYD OMR TND'.split(' '),
};

/** 2 where no currency is told, or none that is known by its code. */
export function minorUnitPlaces(currency: string | undefined): number {
  const found = Object.entries(others).find(
    ([, codes]) => currency !== undefined && codes.includes(currency),
  );
  return found === undefined ? 2 : Number(found[0]);
}
