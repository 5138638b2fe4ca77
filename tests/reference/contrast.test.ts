/** Contrast against WCAG 2.2, 'relative luminance' and 'contrast ratio'. */
import { describe, expect, it } from 'vitest';
import { contrastRatio } from '../../shared/yarn/colour-contrast.ts';

describe('contrast by WCAG 2.2', () => {
  it.each([
    // Derived from WCAG 2.2's formula: the lightest grey that text on white may have, and the first that it may not.
    ['#767676', '#ffffff', 4.542],
    ['#777777', '#ffffff', 4.478],
    // (1 + 0.05) / (0 + 0.05).
    ['#000000', '#ffffff', 21],
    // (1.05) / (0.2126 + 0.05), (0.7152 + 0.05) and (0.0722 + 0.05): the weights of red, green and blue.
    ['#ff0000', '#ffffff', 3.998],
    ['#00ff00', '#ffffff', 1.372],
    ['#0000ff', '#ffffff', 8.592],
  ])('of %s on %s is %d', (a, b, ratio) => {
    expect(contrastRatio(a, b)).toBeCloseTo(ratio, 3);
    expect(contrastRatio(b, a)).toBe(contrastRatio(a, b));
  });

  it('is the same with 0.04045 as with the 0.03928 of before 2021, as no byte lies between them', () => {
    for (let byte = 0; byte < 256; byte++) expect(byte / 255 > 0.03928 && byte / 255 <= 0.04045).toBe(false);
  });
});
