import { describe, expect, it } from 'vitest';
import { type CutPieces, cutOf } from '../../../../shared/design/bundle-edits.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { apply } from '../../../../shared/design/edits.ts';
import type { Bundle } from '../../../../shared/materials/bundles/bundles.ts';
import { cutListHash } from '../../../../shared/materials/bundles/cut-list-hash.ts';
import { cutSoFar } from '../../../../shared/materials/bundles/cut-so-far.ts';
import { designFromLetters } from '../../../notation.ts';

function bundle(yarn: Bundle['yarn'], cutMm: number, count: number): Bundle {
  const pieces = Array.from({ length: count }, (_, i) => ({
    number: i + 1,
    row: i + 1,
    cord: 1,
    knots: 10,
    usedMm: 500,
  }));
  return { yarn, cutMm, totalMm: cutMm * count, pieces };
}

const list = [bundle('y1', 1524, 4), bundle('y1', 800, 2), bundle('y2', 1524, 3)];

describe('what is cut so far', () => {
  it('is counted by yarn and length, and no more of a bundle than it needs', () => {
    const cut: CutPieces[] = [
      { yarn: 'y1', cutMm: 1524, pieces: 4 },
      { yarn: 'y1', cutMm: 800, pieces: 1 },
      { yarn: 'y2', cutMm: 1524, pieces: 5 },
    ];
    expect(cutSoFar(list, cut)).toEqual({ counts: [4, 1, 5], pieces: 8, spare: [] });
  });

  it('is spare where the list has no such yarn or length', () => {
    const cut: CutPieces[] = [
      { yarn: 'y2', cutMm: 800, pieces: 1 },
      { yarn: 'y3', cutMm: 1524, pieces: 2 },
    ];
    expect(cutSoFar(list, cut)).toEqual({ counts: [0, 0, 0], pieces: 0, spare: cut });
  });

  it('follows ticks, each bundle by itself', () => {
    const cut = (design: Design, at: number, pieces: number) =>
      apply(design, cutOf(design, list[at]!, pieces));
    const ticked = cut(cut(designFromLetters(['ab']), 0, 4), 2, 3);
    expect(ticked.bundles?.cut).toEqual([
      { yarn: 'y1', cutMm: 1524, pieces: 4 },
      { yarn: 'y2', cutMm: 1524, pieces: 3 },
    ]);
    expect(cut(ticked, 0, 0).bundles?.cut).toEqual([{ yarn: 'y2', cutMm: 1524, pieces: 3 }]);
    expect(cut(ticked, 0, 9).bundles?.cut?.[0]).toEqual({ yarn: 'y1', cutMm: 1524, pieces: 9 });
  });
});

describe('the hash of a cut list', () => {
  const hashOf = (bundles: readonly Bundle[]) => cutListHash({ bundles, pieces: 0, totalMm: 0, savedMm: 0 });

  it('is the same for what labels tell alike, and another where a yarn, a length, a number or a row differs', () => {
    const one = bundle('y1', 1524, 2);
    const [first, second] = one.pieces;
    const others = [
      { ...one, yarn: 'y2' as const },
      { ...one, cutMm: 1500 },
      bundle('y1', 1524, 3),
      { ...one, pieces: [first!, { ...second!, row: 9 }] },
    ];
    expect(hashOf([{ ...one, pieces: [{ ...first!, usedMm: 1, knots: 2 }, second!] }])).toBe(hashOf([one]));
    expect(new Set([one, ...others].map((each) => hashOf([each]))).size).toBe(5);
    expect(hashOf([one])).toMatch(/^[0-9a-f]{64}$/);
  });
});
