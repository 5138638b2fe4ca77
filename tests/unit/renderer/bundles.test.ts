import { describe, expect, it } from 'vitest';
import { bundleKey } from '../../../renderer/plan/bundles/bundle-choices.ts';
import {
  bundlesWords,
  numbersWords,
  rowsWords,
  savingWords,
} from '../../../renderer/plan/bundles/bundle-words.ts';
import type { Bundle, Bundles } from '../../../shared/materials/bundles/bundles.ts';

/** A bundle of pieces with these numbers, each attached in the row beside it. */
function bundle(
  pieces: readonly (readonly [number: number, row: number])[],
  rest: Partial<Bundle> = {},
): Bundle {
  return {
    yarn: 'y1',
    cutMm: 1524,
    totalMm: 1524 * pieces.length,
    pieces: pieces.map(([number, row]) => ({ number, row, cord: 1, knots: 10, usedMm: 500 })),
    ...rest,
  };
}

const bundles = (list: readonly Bundle[], savedMm = 0): Bundles => ({
  bundles: list,
  pieces: list.reduce((sum, each) => sum + each.pieces.length, 0),
  totalMm: list.reduce((sum, each) => sum + each.totalMm, 0),
  savedMm,
});

describe('the words for a bundle', () => {
  it('put neighbouring numbers together', () => {
    const of = (numbers: readonly number[]) => numbersWords(bundle(numbers.map((number) => [number, 1])));
    expect(of([4])).toBe('4');
    expect(of([1, 2, 3])).toBe('1-3');
    expect(of([1, 3, 4, 9])).toBe('1, 3-4, 9');
  });

  it('say where its pieces come in, the first and the last', () => {
    expect(rowsWords(bundle([[1, 4]]))).toBe('row 4');
    expect(
      rowsWords(
        bundle([
          [1, 4],
          [2, 31],
        ]),
      ),
    ).toBe('rows 4 to 31');
  });

  it('count pieces and yarns, and round the length up', () => {
    const two = bundles([bundle([[1, 1]]), bundle([[1, 2]], { yarn: 'y2' })]);
    expect(bundlesWords(two, 'metric')).toBe('2 pieces of 2 yarns: 3.1 m.');
    expect(bundlesWords(two, 'us')).toBe('2 pieces of 2 yarns: 3.4 yd.');
  });

  it('say what cutting to measure saves, or that it saves nothing', () => {
    const fitted = bundle([[1, 1]], { cutMm: 800, totalMm: 800 });
    expect(savingWords(bundles([fitted], 724), 'metric')).toBe('Cutting to measure takes 0.7 m less, 48 %.');
    expect(savingWords(bundles([bundle([[1, 1]])]), 'metric')).toMatch(/save nothing/);
  });
});

describe('a bundle that is ticked off', () => {
  it('is another one in another design, at another length, or with more pieces', () => {
    const one = bundle([[1, 1]]);
    const keys = [
      bundleKey(1, one),
      bundleKey(2, one),
      bundleKey(1, { ...one, cutMm: 1500 }),
      bundleKey(
        1,
        bundle([
          [1, 1],
          [2, 1],
        ]),
      ),
    ];
    expect(new Set(keys).size).toBe(4);
    expect(bundleKey(1, bundle([[1, 1]]))).toBe(keys[0]);
  });
});
