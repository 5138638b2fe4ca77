/** Colour arithmetic against the standards and papers that define it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hexToLinear, hexToOkLab, linearToHex, okLabToHex } from '../../shared/yarn/colour.ts';
import { deltaE2000, deltaE2000OfLab } from '../../shared/yarn/colour-difference.ts';

/** Sharma, Wu and Dalal 2005, table 1 (DOI 10.1002/col.20070): L, a, b, L, a, b, CIEDE2000. */
const pairs = readFileSync(new URL('./data/ciede2000-pairs.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(',').map(Number) as [number, number, number, number, number, number, number]);

describe('CIEDE2000 by Sharma, Wu and Dalal 2005', () => {
  it('has all 34 pairs to try', () => expect(pairs).toHaveLength(34));

  it.each(pairs)(
    'of (%d, %d, %d) and (%d, %d, %d) is %d, either way round',
    (l1, a1, b1, l2, a2, b2, deltaE) => {
      const first = { l: l1, a: a1, b: b1 };
      const second = { l: l2, a: a2, b: b2 };
      expect(deltaE2000OfLab(first, second).toFixed(4)).toBe(deltaE.toFixed(4));
      expect(deltaE2000OfLab(second, first).toFixed(4)).toBe(deltaE.toFixed(4));
    },
  );

  it('of black and white is 100, since L of the two is 0 and 100 (derived)', () => {
    expect(deltaE2000('#000000', '#ffffff')).toBeCloseTo(100, 4);
  });
});

describe('sRGB by IEC 61966-2-1:1999', () => {
  it('is a straight line of slope 1/12.92 up to 0.04045 and a power of 2.4 above it', () => {
    // 10/255 = 0.0392 lies below the threshold, 11/255 = 0.0431 above it.
    expect(hexToLinear('#0a0b00').r).toBeCloseTo(10 / 255 / 12.92, 12);
    expect(hexToLinear('#0a0b00').g).toBeCloseTo(((11 / 255 + 0.055) / 1.055) ** 2.4, 12);
  });

  it('is back a straight line up to 0.0031308', () => {
    expect(linearToHex({ r: 10 / 255 / 12.92, g: 0.0031308, b: ((11 / 255 + 0.055) / 1.055) ** 2.4 })).toBe(
      '#0a0a0b',
    );
  });

  it('shows half of white light as 188 (derived: 1.055 x 0.5^(1/2.4) - 0.055 = 0.7354)', () => {
    expect(linearToHex({ r: 0.5, g: 0.5, b: 0.5 })).toBe('#bcbcbc');
  });

  it('gives 21.59 % of white light to 128 (derived)', () => {
    expect(hexToLinear('#808080').g).toBeCloseTo(0.2158605, 6);
  });

  it('comes back unchanged for every grey', () => {
    for (let byte = 0; byte < 256; byte++) {
      const hex = `#${byte.toString(16).padStart(2, '0').repeat(3)}`;
      expect(linearToHex(hexToLinear(hex))).toBe(hex);
    }
  });
});

describe('OKLab by its published matrices (2020)', () => {
  it.each([
    ['#ff0000', 0.628, 0.2249, 0.1258],
    ['#00ff00', 0.8664, -0.2339, 0.1795],
    ['#0000ff', 0.452, -0.0325, -0.3115],
    ['#ffffff', 1, 0, 0],
    ['#000000', 0, 0, 0],
  ])('has %s at %d, %d, %d', (hex, l, a, b) => {
    const lab = hexToOkLab(hex);
    expect(lab.l).toBeCloseTo(l, 4);
    expect(lab.a).toBeCloseTo(a, 4);
    expect(lab.b).toBeCloseTo(b, 4);
  });

  it('comes back unchanged all over the cube of colours', () => {
    for (let r = 0; r < 256; r += 15) {
      for (let g = 0; g < 256; g += 15) {
        for (let b = 0; b < 256; b += 15) {
          const hex = `#${((r << 16) | (g << 8) | b).toString(16).padStart(6, '0')}`;
          expect(okLabToHex(hexToOkLab(hex))).toBe(hex);
        }
      }
    }
  });
});
