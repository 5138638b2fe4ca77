import { describe, expect, it } from 'vitest';
import { accentOf } from '../../../shared/pattern/accent.ts';
import { emptyImprint } from '../../../shared/pattern/imprint.ts';
import { inks } from '../../../shared/pattern/page/style.ts';
import { hexToOkLab } from '../../../shared/yarn/colour.ts';
import { contrastRatio } from '../../../shared/yarn/colour-contrast.ts';
import { designFromLetters } from '../../notation.ts';

/** Yarns by colour with their knots; the first one is the ground. */
function accent(
  yarns: readonly (readonly [color: string, knots: number])[],
  own: string | null = null,
): string {
  const base = designFromLetters(['a']).yarns[0]!;
  return accentOf({
    design: { yarns: yarns.map(([color], i) => ({ ...base, id: `y${i + 1}`, color })), ground: 'y1' },
    materials: { yarns: yarns.map(([, knots], i) => ({ id: `y${i + 1}`, knots })) },
    imprint: { ...emptyImprint, accent: own },
  });
}

function hueOf(color: string): number {
  const { a, b } = hexToOkLab(color);
  return Math.atan2(b, a);
}

describe('the accent of a pattern', () => {
  it('is the strongest colour that has a share of the picture', () => {
    expect(
      accent([
        ['#e6dabf', 500],
        ['#9e3329', 300],
        ['#6b7f8f', 300],
      ]),
    ).toBe('#9e3329');
  });

  it('is not the ground, and no yarn that is nowhere tied', () => {
    expect(
      accent([
        ['#b3202c', 900],
        ['#28553f', 60],
      ]),
    ).toBe('#28553f');
    expect(
      accent([
        ['#e6dabf', 900],
        ['#28553f', 60],
        ['#b3202c', 0],
      ]),
    ).toBe('#28553f');
  });

  it('is the ground where no other yarn has a colour', () => {
    expect(
      accent([
        ['#28456f', 900],
        ['#2b2b2b', 60],
      ]),
    ).toBe('#28456f');
  });

  it('is ink where everything is grey or linen', () => {
    expect(
      accent([
        ['#ffffff', 9],
        ['#2b2b2b', 9],
        ['#bfb8ad', 9],
      ]),
    ).toBe(inks.text);
  });

  // WCAG 2.2, success criterion 1.4.3: 4.5 to 1.
  it('is dark enough to be read on paper, and keeps its hue', () => {
    for (const color of ['#f2c12e', '#8fd3e8', '#ffb3c7', '#7fd858', '#c08a52']) {
      const chosen = accent([
        ['#e6dabf', 9],
        [color, 9],
      ]);
      expect(contrastRatio(chosen, inks.paper)).toBeGreaterThanOrEqual(4.5);
      expect(Math.abs(hueOf(chosen) - hueOf(color))).toBeLessThan(0.12);
    }
  });

  it('is the imprint’s own where it has one, as dark as it must be', () => {
    expect(
      accent(
        [
          ['#b3202c', 900],
          ['#28553f', 60],
        ],
        '#1f3f7a',
      ),
    ).toBe('#1f3f7a');
    expect(contrastRatio(accent([['#b3202c', 9]], '#ffe000'), inks.paper)).toBeGreaterThanOrEqual(4.5);
  });
});
