import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BLACK_INK, contrastRatio, inkOn, WHITE_INK } from '../../../shared/yarn/colour-contrast.ts';

describe('the ink of a symbol', () => {
  it('is black on light yarn and white on dark yarn', () => {
    expect(inkOn('#e6ddc9')).toBe(BLACK_INK);
    expect(inkOn('#28455f')).toBe(WHITE_INK);
  });

  it('can be read on every yarn: text needs 4.5 to 1 (WCAG 2.2, 1.4.3)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (rgb) => {
        const fill = `#${rgb.toString(16).padStart(6, '0')}`;
        expect(contrastRatio(inkOn(fill), fill)).toBeGreaterThan(4.58);
      }),
      { seed: 24, numRuns: 2000 },
    );
  });
});
