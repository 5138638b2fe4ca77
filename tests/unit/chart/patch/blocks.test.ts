import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { blockStrips, erasureStrips } from '../../../../shared/chart/patch/block-strips.ts';
import { liftBlock, liftSeen } from '../../../../shared/chart/patch/lift-block.ts';
import { maskOfRectangle, maskOfTouching } from '../../../../shared/chart/patch/mask-of-cells.ts';
import {
  flippedLeftRight,
  flippedTopBottom,
  scaledBlock,
  turnedHalf,
  turnedLeft,
  turnedRight,
} from '../../../../shared/chart/patch/turn-block.ts';
import { designFromLetters } from '../../../notation.ts';
import { blockFromLetters, lettersOfBlock, lettersOfStrips } from '../strips-letters.ts';

const design = designFromLetters([
  ['aaaa', 'aaaa', 'aa.a'],
  ['.bb.', '.bc.', '..-.'],
]);
const layer = design.layers[1]!;

describe('a block', () => {
  it('is lifted off a layer, empty where the layer is', () => {
    const mask = maskOfRectangle({ row: 1, column: 1 }, { row: 2, column: 3 }, design);
    expect(lettersOfBlock(liftBlock(layer.rows, mask))).toEqual(['bc.', '.-.']);
  });

  it('is empty outside the mask', () => {
    const mask = maskOfTouching(flatten(design), { row: 0, column: 1 });
    expect(lettersOfBlock(liftBlock(layer.rows, mask))).toEqual(['bb', 'b.']);
  });

  it('may be lifted as the chart shows it', () => {
    const mask = maskOfRectangle({ row: 1, column: 1 }, { row: 2, column: 3 }, design);
    expect(lettersOfBlock(liftSeen(flatten(design), mask))).toEqual(['bca', 'a-a']);
  });

  it('of nothing has no cells', () => {
    const mask = maskOfRectangle({ row: 9, column: 9 }, { row: 9, column: 9 }, design);
    expect(liftBlock(layer.rows, mask)).toEqual({ columns: 0, rows: 0, cells: new Uint8Array(0) });
  });

  it('is put down at any cell, over the edge too; where it is empty the layer stays', () => {
    const block = blockFromLetters(['bbc', '.-c']);
    expect(lettersOfStrips(blockStrips(block, 1, 2), design)).toEqual(['....', '..bb', '...-']);
    expect([...blockStrips(block, -1, 0)]).toEqual([-1, 0, 2, 2, -1, 2, 1, 3, 0, 1, 1, 255, 0, 2, 1, 3]);
  });

  it('leaves emptiness where it was taken away', () => {
    const mask = maskOfTouching(flatten(design), { row: 0, column: 1 });
    expect(lettersOfStrips(erasureStrips(mask), design)).toEqual(['.__.', '._..', '....']);
  });
});

describe('a block in the hand', () => {
  const block = blockFromLetters(['abc', 'd.-']);

  it('is flipped', () => {
    expect(lettersOfBlock(flippedLeftRight(block))).toEqual(['cba', '-.d']);
    expect(lettersOfBlock(flippedTopBottom(block))).toEqual(['d.-', 'abc']);
  });

  it('is turned to the right, to the left, and half around', () => {
    expect(lettersOfBlock(turnedRight(block))).toEqual(['da', '.b', '-c']);
    expect(lettersOfBlock(turnedLeft(block))).toEqual(['c-', 'b.', 'ad']);
    expect(lettersOfBlock(turnedHalf(block))).toEqual(['-.d', 'cba']);
  });

  it('is stretched or thinned', () => {
    expect(lettersOfBlock(scaledBlock(block, 6, 2))).toEqual(['aabbcc', 'dd..--']);
    expect(lettersOfBlock(scaledBlock(block, 4, 3))).toEqual(['abbc', 'd..-', 'd..-']);
    expect(lettersOfBlock(scaledBlock(block, 1, 1))).toEqual(['.']);
    expect(lettersOfBlock(scaledBlock(block, 2, 2))).toEqual(['ac', 'd-']);
  });
});
