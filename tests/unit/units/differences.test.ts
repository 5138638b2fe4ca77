import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, lengthDifference } from '../../../shared/units/length.ts';
import { formatMass, massDifference } from '../../../shared/units/mass.ts';
import { formatMoney, moneyDifference } from '../../../shared/units/money.ts';
import { formatTime, timeDifference } from '../../../shared/units/time.ts';
import { formatYarnLength, yarnLengthDifference } from '../../../shared/units/yarn-length.ts';

describe('a difference', () => {
  it('is that of the figures that are shown', () => {
    const enough = { enough: true };
    expect(formatYarnLength(99_950, 'both', enough)).toBe('100 m (110 yd)');
    expect(formatYarnLength(98_010, 'both', enough)).toBe('98.1 m (108 yd)');
    expect(yarnLengthDifference(98_010, 99_950, 'both', enough)).toBe('+1.9 m (+2 yd)');
    expect(lengthDifference(341, 342, 'metric', enough)).toBe('same');
    expect(lengthDifference(341, 342, 'both', enough)).toBe('same');
    expect(massDifference(1215, 1219.5, 'both', enough)).toBe('same (+1 oz)');
    expect(lengthDifference(341, 346, 'both')).toBe('+0.5 cm (+1/4 in)');
    expect(massDifference(1204, 996, 'metric', enough)).toBe('−214 g');
    expect(massDifference(400, 4000, 'both')).toBe('+3.6 kg (+7 lb 14.9 oz)');
    expect(timeDifference(3598, 3602)).toBe('same');
    expect(timeDifference(59 * 60, 7210)).toBe('+1 h 1 min');
    expect(moneyDifference(10.004, 12.006)).toBe('+2.01');
    expect(moneyDifference(1000, 400, 'JPY')).toBe('−600 JPY');
  });

  const amount = fc.double({ min: 0, max: 300_000, noNaN: true });
  const rounding = fc.constantFrom({}, { enough: true }, { spare: true });

  /** What a reader takes a figure for, in its smaller unit: the fraction of an inch, the ounces and the minutes too. */
  const read = (figure: string) => {
    const [, sign = '', whole = '0', top = '0', bottom = '1', unit = '', small = '0'] =
      /^([+−]?)(?:(\d[\d.]*))?(?: ?(\d+)\/(\d+))? ?(mm|cm|m|in|yd|g|kg|oz|lb|h|min|)(?: ([\d.]+) (?:oz|min))?$/.exec(
        figure.replaceAll(',', ''),
      )!;
    const per: Record<string, number> = { cm: 10, kg: 1000, lb: 16, h: 60 };
    const size = (Number(whole) + Number(top) / Number(bottom)) * (per[unit] ?? 1) + Number(small);
    return sign === '−' ? -size : size;
  };
  const readDifference = (figure: string) => (figure === 'same' ? 0 : read(figure));

  it.each([
    ['yarn', formatYarnLength, yarnLengthDifference],
    ['length', formatLength, lengthDifference],
    ['mass', formatMass, massDifference],
  ] as const)('of any two figures of %s is what a reader reckons', (_kind, format, difference) => {
    fc.assert(
      fc.property(amount, amount, rounding, fc.constantFrom('metric', 'us'), (a, b, round, units) => {
        const by = read(format(b, units, round)) - read(format(a, units, round));
        const told = difference(a, b, units, round);
        // Kilograms are told to the gram: the tenth of a gram of the lighter one goes in it.
        const near = told.endsWith('kg') ? 0.5 + 1e-6 : 1e-6;
        expect(Math.abs(readDifference(told) - by)).toBeLessThanOrEqual(near);
      }),
    );
  });

  it('of any two times or amounts of money is what a reader reckons', () => {
    fc.assert(
      fc.property(amount, amount, (a, b) => {
        expect(readDifference(timeDifference(a, b))).toBeCloseTo(
          read(formatTime(b)) - read(formatTime(a)),
          6,
        );
        expect(readDifference(moneyDifference(a, b))).toBeCloseTo(
          read(formatMoney(b)) - read(formatMoney(a)),
          6,
        );
      }),
    );
  });
});
