import { describe, expect, it } from 'vitest';
import { formatMoney } from '../../../shared/units/money.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { formatUncertain, uncertain } from '../../../shared/units/uncertain.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';

describe('a share', () => {
  it.each([
    [0.06, '6 %', '6 %'],
    [0.061, '6 %', '7 %'],
    [0.0151, '1.5 %', '1.6 %'],
    [0, '0 %', '0 %'],
    [1.2, '120 %', '120 %'],
  ])('of %f is shown as %s, or as %s where it must be enough', (share, nearest, enough) => {
    expect(formatPercent(share)).toBe(nearest);
    expect(formatPercent(share, { enough: true })).toBe(enough);
  });
});

describe('a figure that is known only so well', () => {
  const need = uncertain(18_400, 17_400, 19_500);

  it('carries half of its interval as a share, rounded up', () => {
    expect(need.share).toBeCloseTo(0.0571, 4);
    expect(formatUncertain(need, (mm) => formatYarnLength(mm, 'metric'))).toBe('18.4 m ± 6 %');
    expect(formatUncertain(need, (mm) => formatYarnLength(mm, 'both', { enough: true }))).toBe(
      '18.4 m (20.2 yd) ± 6 %',
    );
  });

  it('has no ± where nothing leaves it open', () => {
    expect(formatUncertain(uncertain(500, 500, 500), (mm) => `${mm} mm`)).toBe('500 mm');
    expect(uncertain(0, 0, 3).share).toBe(0);
  });
});

describe('money', () => {
  it('has two decimals, and the code of its currency where it is told', () => {
    expect(formatMoney(13.5)).toBe('13.50');
    expect(formatMoney(1.005, 'EUR')).toBe('1.01 EUR');
    expect(formatMoney(0)).toBe('0.00');
  });
});
