import { describe, expect, it } from 'vitest';
import {
  bundlesWords,
  cutWords,
  labelsWords,
  numbersWords,
  rowsWords,
  savingWords,
  spareWords,
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

describe('the words for what is cut', () => {
  it('say where fewer or more are cut than the bundle has', () => {
    const three = bundle([
      [1, 1],
      [2, 1],
      [3, 1],
    ]);
    expect(cutWords(1, three)).toBe('1 is cut');
    expect(cutWords(2, three)).toBe('2 are cut');
    expect(cutWords(5, three)).toBe('2 more are cut');
  });

  it('name the pieces that the list has not, also of a yarn that is gone', () => {
    const spare = [
      { yarn: 'y1' as const, cutMm: 1524, pieces: 12 },
      { yarn: 'y9' as const, cutMm: 800, pieces: 1 },
    ];
    expect(spareWords(spare, [{ id: 'y1', name: 'Tide' }], 'metric')).toContain(
      ': 12 pieces of Tide at 152.4 cm; 1 piece of a yarn that is gone at 80 cm.',
    );
  });

  it('say whether the labels still fit', () => {
    expect(labelsWords(true)).toContain('just these bundles');
    expect(labelsWords(false)).toContain('has changed since labels were printed');
  });
});
