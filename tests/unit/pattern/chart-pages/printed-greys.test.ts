import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { demoDesigns } from '../../../../shared/demos/demo-designs.ts';
import { codeOf, yarnIdOf } from '../../../../shared/design/codes.ts';
import { printedGreys } from '../../../../shared/pattern/chart-pages/printed-greys.ts';
import { contrastRatio, inkOn } from '../../../../shared/yarn/colour-contrast.ts';
import { cieLabOf } from '../../../../shared/yarn/colour-difference.ts';
import { type TouchingPair, touchingPairs } from '../../../../shared/yarn/touching.ts';

const yarnsOf = (colors: readonly string[]) => colors.map((color, i) => ({ id: yarnIdOf(i + 1), color }));

const touch = (a: number, b: number, count = 10): TouchingPair => ({ a, b, count });

function lightness(color: string): number {
  return cieLabOf(color).l;
}

describe('the greys of a copy for printers without colours', () => {
  it('keep yarns of one grey apart where they touch', () => {
    // Three colours of nearly the same lightness.
    const greys = printedGreys(yarnsOf(['#b03a3a', '#2f7a3a', '#5a62c0']), [
      touch(1, 2),
      touch(2, 3),
      touch(1, 3),
    ]);
    expect(new Set(greys).size).toBe(3);
  });

  it('let yarns that do not touch keep their lightness', () => {
    const [one, other] = printedGreys(yarnsOf(['#e8e0c8', '#e4dcc4']), []);
    expect(one).toBe(other);
    expect(Math.abs(lightness(one!) - lightness('#e8e0c8'))).toBeLessThan(6);
  });

  it('tell apart every two yarns that touch in the demo designs, by 8 in lightness at least', () => {
    for (const { make } of demoDesigns) {
      const design = make();
      const pairs = touchingPairs(flatten(design));
      const greys = new Map(
        printedGreys(design.yarns, pairs).map((grey, i) => [codeOf(design.yarns[i]!.id), grey]),
      );
      for (const { a, b } of pairs) {
        const apart = Math.abs(lightness(greys.get(a)!) - lightness(greys.get(b)!));
        expect(apart, `${design.title}: ${a} and ${b}`).toBeGreaterThan(8);
      }
    }
  });

  it('are the same each time, and grey', () => {
    const yarns = yarnsOf(
      Array.from({ length: 64 }, (_, i) => `#${(i * 262_111).toString(16).padStart(6, '0')}`),
    );
    const pairs = yarns.flatMap((_, a) =>
      yarns.slice(a + 1).map((__, k) => touch(a + 1, a + k + 2, (a * k) % 7)),
    );
    const greys = printedGreys(yarns, pairs);
    expect(printedGreys(yarns, pairs)).toEqual(greys);
    for (const grey of greys) expect(grey).toMatch(/^#(..)\1\1$/);
  });

  it('let the symbols stand out by 6 to 1 at least, more than the 4.5 that WCAG 2.2 asks of text', () => {
    const colors = Array.from(
      { length: 32 },
      (_, i) => `#${(i * 8).toString(16).padStart(2, '0').repeat(3)}`,
    );
    for (const grey of printedGreys(yarnsOf(colors), [])) {
      expect(contrastRatio(grey, inkOn(grey))).toBeGreaterThan(6);
    }
  });
});
