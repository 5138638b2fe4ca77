import { describe, expect, it } from 'vitest';
import { mmPerInch, mmPerYard } from '../../shared/units/length.ts';
import { gPerOunce, gPerPound } from '../../shared/units/mass.ts';

describe('units', () => {
  // International yard and pound agreement, 1959; 16 CFR 500.19.
  it.each([
    ['an inch', mmPerInch, 25.4, 'mm'],
    ['a yard', mmPerYard, 914.4, 'mm'],
    ['a pound', gPerPound, 453.59237, 'g'],
    ['an ounce', gPerOunce, 28.349523125, 'g'],
  ])('%s is exactly what was agreed', (_, ours, agreed) => {
    expect(ours).toBe(agreed);
  });

  it('a yard is 36 inches and a pound 16 ounces', () => {
    expect(mmPerYard).toBeCloseTo(36 * mmPerInch, 9);
    expect(gPerPound).toBeCloseTo(16 * gPerOunce, 9);
  });
});
