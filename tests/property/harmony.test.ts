import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hexToOkLab } from '../../shared/yarn/colour.ts';
import { between, complementary, darker, lighter, softer } from '../../shared/yarn/harmony.ts';

fc.configureGlobal({ seed: 9_100, numRuns: 2_000 });

const hexOf = (value: number) => `#${value.toString(16).padStart(6, '0')}`;
/** Any colour, greys and corners of the cube more often than chance would have them. */
const colour = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 0xffffff }).map(hexOf) },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 255 }).map((byte) => hexOf(byte * 0x010101)) },
  { weight: 1, arbitrary: fc.constantFrom('#ff0000', '#00ff00', '#0000ff', '#ffff00', '#00ffff', '#ff00ff') },
);
const lightness = (hex: string) => hexToOkLab(hex).l;
const chroma = (hex: string) => Math.hypot(hexToOkLab(hex).a, hexToOkLab(hex).b);
/** How far rounding to 8 bits moves lightness or chroma, but for colours near black: there one step is a large one. */
const ROUNDING = 0.012;
const isNearBlack = (hex: string) => lightness(hex) < 0.2;

describe('colours made from others', () => {
  it('are lighter where they are called lighter, and darker where darker, but for white and black', () => {
    fc.assert(
      fc.property(colour, (hex) => {
        if (hex === '#ffffff') expect(lighter(hex)).toBe(hex);
        else expect(lightness(lighter(hex))).toBeGreaterThan(lightness(hex));
        if (hex === '#000000') expect(darker(hex)).toBe(hex);
        else expect(lightness(darker(hex))).toBeLessThan(lightness(hex));
      }),
    );
  });

  it('keep their lightness where they are made softer or opposite, and are never stronger', () => {
    fc.assert(
      fc.property(colour, (hex) => {
        if (isNearBlack(hex)) return;
        for (const made of [softer(hex), complementary(hex)]) {
          expect(Math.abs(lightness(made) - lightness(hex))).toBeLessThan(ROUNDING);
          expect(chroma(made)).toBeLessThan(chroma(hex) + ROUNDING);
        }
      }),
    );
  });

  it('come back when the opposite of the opposite is taken, where a screen shows the opposite in full', () => {
    fc.assert(
      fc.property(colour, (hex) => {
        const opposite = complementary(hex);
        if (isNearBlack(hex) || chroma(opposite) < chroma(hex) - 0.002) return;
        const { l, a, b } = hexToOkLab(complementary(opposite));
        const from = hexToOkLab(hex);
        expect(Math.hypot(l - from.l, a - from.a, b - from.b)).toBeLessThan(2 * ROUNDING);
      }),
    );
  });

  it('begin at one colour and end at the other, and are the same from either end', () => {
    fc.assert(
      fc.property(colour, colour, (a, b) => {
        expect([between(a, b, 0), between(a, b, 1)]).toEqual([a, b]);
        expect(between(a, b, 0.5)).toBe(between(b, a, 0.5));
      }),
    );
  });

  it('lie between the two in lightness', () => {
    fc.assert(
      fc.property(colour, colour, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        const least = Math.min(lightness(a), lightness(b));
        const most = Math.max(lightness(a), lightness(b));
        const made = between(a, b, share);
        if (isNearBlack(made)) return;
        expect(lightness(made)).toBeGreaterThan(least - ROUNDING);
        expect(lightness(made)).toBeLessThan(most + ROUNDING);
      }),
    );
  });
});
