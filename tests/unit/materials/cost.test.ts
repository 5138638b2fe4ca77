import { describe, expect, it } from 'vitest';
import type { Money } from '../../../shared/design/schema.ts';
import { costOf } from '../../../shared/materials/cost.ts';
import { designFromLetters } from '../../notation.ts';

const plain = designFromLetters(['ab']);
const yarns = [
  { id: 'y1', name: 'Linen', skeins: 3, toBuySkeins: 1 },
  { id: 'y2', name: 'Dusk', skeins: 1, toBuySkeins: 0 },
] as const;

function cost(money?: Money, prices: readonly (number | undefined)[] = [4.5, 6]) {
  const design = {
    yarns: plain.yarns.map((yarn, i) => {
      const price = prices[i];
      return price === undefined ? yarn : { ...yarn, price };
    }),
    ...(money && { money }),
  };
  return costOf(design, { yarns, cordMm: 20_000, seconds: 36_000 });
}

const told: Money = {
  currency: 'EUR',
  cordPricePerM: 0.4,
  dowelPrice: 3,
  backingPrice: 2.5,
  patternFees: 0,
  hourlyRate: 12,
  overheadShare: 0.1,
};

describe('what a hanging costs', () => {
  it('is yarn by whole skeins, cord by the metre, dowel, backing and fees', () => {
    const { parts, materials, missing } = cost(told);
    expect(parts.yarn).toEqual({
      amount: 19.5,
      whole: true,
      formula: 'Yarn = Linen 3 × 4.50 EUR + Dusk 1 × 6.00 EUR = 19.50 EUR',
    });
    expect(parts.cord.formula).toBe('Cord = 20 m × 0.40 EUR = 8.00 EUR');
    expect(materials.amount).toBe(33);
    expect(materials.formula).toBe(
      'Cost of materials = yarn 19.50 EUR + cord 8.00 EUR + dowel 3.00 EUR + backing 2.50 EUR + pattern fees 0.00 EUR = 33.00 EUR',
    );
    expect(materials.whole).toBe(true);
    expect(missing).toEqual([]);
  });

  it('adds hours at the maker’s rate and a share for overhead, and doubles for retail', () => {
    const { labour, overhead, wholesale, retail } = cost(told);
    expect(labour.formula).toBe('Labour = 10 h × 12.00 EUR = 120.00 EUR');
    expect(overhead.amount).toBeCloseTo(15.3, 9);
    expect(overhead.formula).toBe('Overhead = 10 % × (materials 33.00 EUR + labour 120.00 EUR) = 15.30 EUR');
    expect(wholesale.amount).toBeCloseTo(168.3, 9);
    expect(wholesale.formula).toBe(
      'Wholesale = materials 33.00 EUR + labour 120.00 EUR + overhead 15.30 EUR = 168.30 EUR',
    );
    expect(retail).toMatchObject({
      whole: true,
      formula: 'Retail = wholesale 168.30 EUR × 2 = 336.60 EUR',
    });
  });

  it('goes by the multipliers that the maker sets', () => {
    const { wholesale, retail } = cost({
      ...told,
      wholesale: 'keystone',
      keystoneTimes: 2.5,
      retailTimes: 1.8,
    });
    expect(wholesale.formula).toBe('Wholesale = cost of materials 33.00 EUR × 2.5 = 82.50 EUR');
    expect(retail.amount).toBeCloseTo(148.5, 9);
  });

  it('names what was not told, and says which figures are not whole', () => {
    const { parts, materials, wholesale, missing } = cost({ cordPricePerM: 0.4 }, [4.5]);
    expect(missing).toEqual([
      'the price of a skein of Dusk',
      'the price of the dowel',
      'the price of the backing',
      'the fees for the pattern',
      'the pay for an hour',
      'the overhead',
    ]);
    expect(parts.yarn).toMatchObject({ amount: 13.5, whole: false });
    expect(parts.dowel.formula).toBe('Dowel: not told');
    expect(materials.formula).toBe(
      'Cost of materials = yarn 13.50 + cord 8.00 + dowel not told + backing not told + pattern fees not told = 21.50',
    );
    expect([materials.whole, wholesale.whole]).toEqual([false, false]);
  });

  it('is nothing known where nothing was told', () => {
    const { retail, parts, currency } = cost(undefined, []);
    expect(retail).toMatchObject({ amount: 0, whole: false });
    expect(parts.yarn).toEqual({ amount: 0, whole: false, formula: 'Yarn = 0.00' });
    expect(currency).toBeNull();
  });

  it('tells apart what the yarn still to be bought costs', () => {
    expect(cost(told).yarnToBuy.formula).toBe('Yarn to buy = Linen 1 × 4.50 EUR = 4.50 EUR');
  });
});
