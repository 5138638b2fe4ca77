import { describe, expect, it } from 'vitest';
import type { Money } from '../../shared/design/schema.ts';
import { costOf } from '../../shared/materials/cost.ts';
import { minorUnitPlaces } from '../../shared/units/minor-unit.ts';
import { designFromLetters } from '../notation.ts';

/** Supplies of 20, three hours at 10, and an overhead of 5. */
const money: Money = {
  cordPricePerM: 0,
  dowelPrice: 20,
  backingPrice: 0,
  patternFees: 0,
  hourlyRate: 10,
  overheadShare: 0.1,
};

function cost(change: Partial<Money>) {
  const design = { yarns: designFromLetters(['a']).yarns, money: { ...money, ...change } };
  return costOf(design, { yarns: [], cordMm: 0, seconds: 3 * 3600 });
}

describe('prices by common conventions', () => {
  it('supplies, labour and overhead are the cost, doubled for wholesale and again for retail', () => {
    // 'Pricing your handmade products', cuttingforbusiness.com.
    const { wholesale, retail } = cost({ sumTimes: 2 });
    expect(wholesale.amount).toBe(2 * (20 + 30 + 5));
    expect(wholesale.formula).toBe('Wholesale = materials, labour and overhead 55.00 × 2 = 110.00');
    expect(retail.amount).toBe(220);
  });

  it('wholesale is materials, labour and overhead as they are, and retail twice that, until the maker says otherwise', () => {
    // Common practice, no source.
    const { wholesale, retail } = cost({});
    expect(wholesale.amount).toBe(55);
    expect(retail.amount).toBe(110);
  });

  it('keystone is twice the cost', () => {
    // 'Simple pricing formulas', 5minutepitch.com.
    const { wholesale, retail } = cost({ wholesale: 'keystone' });
    expect(wholesale.amount).toBe(40);
    expect(retail.amount).toBe(80);
  });
});

describe('the minor unit of money', () => {
  it('is that of ISO 4217, for all codes on which it agrees with the places in use by CLDR', () => {
    // CLDR, as the platform has it, counts fewer places where the minor unit has gone out of use; never more of them.
    // Where it counts others than two that are in use, they are those of ISO 4217.
    for (const currency of Intl.supportedValuesOf('currency')) {
      const inUse = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
      expect(minorUnitPlaces(currency), currency).toBeGreaterThanOrEqual(inUse.maximumFractionDigits!);
    }
  });

  it.each([
    // ISO 4217, list one; values from memory.
    ['EUR', 2],
    ['USD', 2],
    ['HUF', 2],
    ['JPY', 0],
    ['KRW', 0],
    ['ISK', 0],
    ['KWD', 3],
    ['TND', 3],
  ])('of %s has %i places', (currency, places) => {
    expect(minorUnitPlaces(currency)).toBe(places);
  });
});
