import { describe, expect, it } from 'vitest';
import type { Money } from '../../shared/design/schema.ts';
import { costOf } from '../../shared/materials/cost.ts';
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
    expect(wholesale.amount).toBeCloseTo(2 * (20 + 30 + 5), 9);
    expect(wholesale.formula).toBe('Wholesale = materials, labour and overhead 55.00 × 2 = 110.00');
    expect(retail.amount).toBeCloseTo(220, 9);
  });

  it('wholesale is materials, labour and overhead as they are, and retail twice that, until the maker says otherwise', () => {
    // Common practice, no source.
    const { wholesale, retail } = cost({});
    expect(wholesale.amount).toBeCloseTo(55, 9);
    expect(retail.amount).toBeCloseTo(110, 9);
  });

  it('keystone is twice the cost', () => {
    // 'Simple pricing formulas', 5minutepitch.com.
    const { wholesale, retail } = cost({ wholesale: 'keystone' });
    expect(wholesale.amount).toBe(40);
    expect(retail.amount).toBe(80);
  });
});
