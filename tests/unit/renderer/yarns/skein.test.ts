import { describe, expect, it } from 'vitest';
import {
  skeinFault,
  skeinMetres,
  skeinUnits,
  withGrams,
  withMetres,
} from '../../../../renderer/draw/yarns/skein.ts';

describe('a skein as its label tells it', () => {
  const skein = { metresPer100G: 200, skeinG: 50 };

  it('has the length that its mass makes of the metres in 100 g', () => {
    expect(skeinMetres(skein)).toBe(100);
  });

  it('keeps its mass where another length is written', () => {
    expect(withMetres(skein, 125)).toEqual({ metresPer100G: 250, skeinG: 50 });
  });

  it('keeps its length where another mass is written', () => {
    const heavier = withGrams(skein, 100);
    expect(heavier).toEqual({ metresPer100G: 100, skeinG: 100 });
    expect(skeinMetres(heavier)).toBe(100);
  });

  it('is refused where no yarn can be that fine', () => {
    expect(skeinFault({ metresPer100G: 100_000, skeinG: 1 })).toBe('');
    expect(skeinFault(withMetres({ metresPer100G: 1, skeinG: 1 }, 1001))).toMatch(/label again/);
  });

  it('is written in yards and ounces where the maker’s units are US ones', () => {
    // 1 yd = 0.9144 m and 1 oz = 28.349523125 g, exact: international yard and pound agreement, 1959.
    expect(0.9144 * skeinUnits.us.perMetre).toBeCloseTo(1, 12);
    expect(28.349523125 * skeinUnits.us.perGram).toBeCloseTo(1, 12);
    expect(skeinUnits.both.length).toBe('metres');
  });
});
