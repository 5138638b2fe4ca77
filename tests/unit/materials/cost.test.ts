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
    expect(overhead.amount).toBe(15.3);
    expect(overhead.formula).toBe('Overhead = 10 % × (materials 33.00 EUR + labour 120.00 EUR) = 15.30 EUR');
    expect(wholesale.amount).toBe(168.3);
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
    expect(retail.amount).toBe(148.5);
  });

  it('names what was not told, and says which figures are not whole', () => {
    const { parts, materials, wholesale, missing, missingOfMaterials } = cost({ cordPricePerM: 0.4 }, [4.5]);
    expect(missing).toEqual([
      'the price of a skein of Dusk',
      'the price of the dowel',
      'the price of the backing',
      'the fees for the pattern',
      'the pay for an hour',
      'the share for overhead',
    ]);
    expect(missingOfMaterials).toEqual(missing.slice(0, 4));
    expect(parts.yarn).toMatchObject({ amount: 13.5, whole: false });
    expect(parts.dowel.formula).toBe('Dowel: the price of the dowel, not told yet');
    expect(materials.formula).toBe(
      'Cost of materials = yarn at least 13.50 + cord 8.00 + dowel not told yet + backing not told yet + pattern fees not told yet = at least 21.50',
    );
    expect([materials.whole, wholesale.whole]).toEqual([false, false]);
  });

  it('is nothing known where nothing was told', () => {
    const { retail, parts, materials, overhead, currency, missing } = cost(undefined, []);
    expect(missing[0]).toBe('the price of a skein of Linen and Dusk');
    expect(parts.yarn.formula).toBe('Yarn: not told yet');
    expect(overhead.formula).toBe('Overhead: the share for overhead, not told yet');
    expect(retail).toEqual({ amount: 0, whole: false, formula: 'Retail: not told yet' });
    expect([parts.yarn, materials].map(({ amount, whole }) => [amount, whole])).toEqual([
      [0, false],
      [0, false],
    ]);
    expect(currency).toBeNull();
  });

  it('tells apart what must be bought now: the yarn that is not owned, and all the rest', () => {
    const { yarnToBuy, toPay, materials } = cost(told);
    expect(yarnToBuy.formula).toBe('Yarn to buy = Linen 1 × 4.50 EUR = 4.50 EUR');
    expect(toPay.formula).toBe(
      'To pay now = yarn to buy 4.50 EUR + cord 8.00 EUR + dowel 3.00 EUR + backing 2.50 EUR + pattern fees 0.00 EUR = 18.00 EUR',
    );
    expect(materials.amount - toPay.amount).toBe(15);
  });

  it('needs no price of a yarn of which nothing is to be bought, to say what is to pay', () => {
    const { yarnToBuy, toPay, materials } = cost(told, [4.5]);
    expect([yarnToBuy.whole, toPay.whole, materials.whole]).toEqual([true, true, false]);
  });

  it('goes on from what is printed, so that whoever adds the lines up gets the sum', () => {
    const finely = {
      ...told,
      cordPricePerM: 0.3333,
      dowelPrice: 2.345,
      patternFees: 1.115,
      overheadShare: 0.125,
    };
    const { parts, materials, overhead, wholesale, retail } = cost(
      { ...finely, retailTimes: 1.45 },
      [4.333, 6.335],
    );
    expect(parts.yarn.formula).toBe('Yarn = Linen 3 × 4.333 EUR + Dusk 1 × 6.335 EUR = 19.34 EUR');
    expect(parts.cord.formula).toBe('Cord = 20 m × 0.3333 EUR = 6.67 EUR');
    expect(materials.amount).toBe(19.34 + 6.67 + 2.35 + 2.5 + 1.12);
    expect(overhead.formula).toBe(
      'Overhead = 12.5 % × (materials 31.98 EUR + labour 120.00 EUR) = 19.00 EUR',
    );
    expect(retail.formula).toBe(`Retail = wholesale ${wholesale.amount} EUR × 1.45 = 247.92 EUR`);
  });

  it('reckons with the hours and metres that are shown', () => {
    const design = { yarns: plain.yarns, money: told };
    const { parts, labour } = costOf(design, { yarns: [], cordMm: 123_010, seconds: 36_100 });
    expect(parts.cord.formula).toBe('Cord = 124 m × 0.40 EUR = 49.60 EUR');
    expect(labour.formula).toBe('Labour = 10 h × 12.00 EUR = 120.00 EUR');
    const shorter = costOf(design, { yarns: [], cordMm: 0, seconds: 2510 });
    expect(shorter.labour.formula).toBe('Labour = 42 min × 12.00 EUR = 8.40 EUR');
  });

  it('knows money without hundredths, and with thousandths', () => {
    // ISO 4217: the yen has no minor unit, the Tunisian dinar has a thousandth.
    const yen = cost({ ...told, currency: 'JPY', cordPricePerM: 62.5, dowelPrice: 480.5 }, [650, 700]);
    expect(yen.parts.cord.formula).toBe('Cord = 20 m × 62.5 JPY = 1,250 JPY');
    expect(yen.parts.dowel).toMatchObject({ amount: 481, formula: 'Dowel = 481 JPY' });
    expect(cost({ ...told, currency: 'TND', dowelPrice: 1.2345 }).parts.dowel.formula).toBe(
      'Dowel = 1.235 TND',
    );
  });
});
