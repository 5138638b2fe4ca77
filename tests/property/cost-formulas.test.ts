import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Money } from '../../shared/design/schema.ts';
import type { Amount } from '../../shared/materials/amount.ts';
import { costOf } from '../../shared/materials/cost.ts';
import { roundMoney } from '../../shared/units/money.ts';
import { designFromLetters } from '../notation.ts';

const { yarns } = designFromLetters(['abc']);

/** Prices as people tell them: mostly whole hundredths, some finer. */
const price = fc.oneof(
  fc.integer({ min: 0, max: 20_000 }).map((cents) => cents / 100),
  fc.integer({ min: 0, max: 200_000 }).map((mills) => mills / 1000),
);
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined, freq: 5 });
const times = fc.integer({ min: 1, max: 4000 }).map((count) => count / 1000);

const told: fc.Arbitrary<Money> = fc
  .record({
    currency: maybe(fc.constantFrom('EUR', 'USD', 'JPY', 'KWD')),
    cordPricePerM: maybe(price),
    dowelPrice: maybe(price),
    backingPrice: maybe(price),
    patternFees: maybe(price),
    hourlyRate: maybe(price),
    overheadShare: maybe(fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 1000)),
    wholesale: maybe(fc.constantFrom('sum' as const, 'keystone' as const)),
    sumTimes: maybe(times),
    keystoneTimes: maybe(times),
    retailTimes: maybe(times),
  })
  .map((money) => JSON.parse(JSON.stringify(money)) as Money);

const takes = fc.record({
  prices: fc.array(maybe(price), { minLength: 3, maxLength: 3 }),
  skeins: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 6, maxLength: 6 }),
  cordMm: fc.integer({ min: 0, max: 900_000 }),
  seconds: fc.integer({ min: 0, max: 900_000 }),
  units: fc.constantFrom('metric' as const, 'us' as const, 'both' as const),
});

/** What a reader reckons from the figures that are printed between the first sign of equality and the last. */
function reckoned(formula: string, currency: string | undefined) {
  const [, ...sides] = formula.split(' = ');
  const [words, result = words] = sides.map((side) =>
    side
      .replaceAll(',', '')
      .replace(/(\d+) h (\d+) min/g, (_, hours, minutes) => String(Number(hours) + Number(minutes) / 60))
      .replace(/(\d+) min/g, (_, minutes) => String(Number(minutes) / 60))
      .replaceAll('not told yet', '0'),
  );
  // A share of a sum is the only one with a percentage.
  const [, percent = '100', of = words!] = /^([\d.]+) % × \((.*)\)$/.exec(words!) ?? [];
  const lines = of.split(' + ').map((line) => {
    const product = line.split(' × ').reduce((so, factor) => so * numberIn(factor), 1);
    // Each line is rounded for itself.
    return roundMoney(product, currency);
  });
  const sum = lines.reduce((so, line) => so + line, 0);
  return { printed: numberIn(result!), gives: roundMoney((Number(percent) / 100) * sum, currency) };
}

/** The last number, for yarns and units stand around it. */
function numberIn(words: string): number {
  return Number(words.match(/\d+(\.\d+)?/g)!.at(-1));
}

describe('the formula beside each amount', () => {
  it('gives the printed amount to whoever reckons with what is printed', () => {
    fc.assert(
      fc.property(told, takes, (money, { prices, skeins, cordMm, seconds, units }) => {
        const design = {
          yarns: yarns.map((yarn, i) => (prices[i] === undefined ? yarn : { ...yarn, price: prices[i]! })),
          money,
        };
        const taken = {
          yarns: ['Moss', 'Dusk', 'Tide'].map((name, i) => ({
            id: yarns[i]!.id,
            name,
            skeins: skeins[i]!,
            toBuySkeins: Math.min(skeins[i]!, skeins[i + 3]!),
          })),
          cordMm,
          seconds,
        };
        const { parts, materials, labour, overhead, wholesale, retail, yarnToBuy, toPay } = costOf(
          design,
          taken,
          units,
        );
        const all: Amount[] = [...Object.values(parts), materials, labour, overhead];
        for (const { amount, whole, formula } of [...all, wholesale, retail, yarnToBuy, toPay]) {
          expect(amount).toBe(roundMoney(amount, money.currency));
          if (!formula.includes(' = ')) {
            expect([amount, whole, formula]).toEqual([0, false, expect.stringMatching(/not told yet$/)]);
            continue;
          }
          expect(reckoned(formula, money.currency), formula).toEqual({ printed: amount, gives: amount });
        }
      }),
      { numRuns: 500 },
    );
  });
});
