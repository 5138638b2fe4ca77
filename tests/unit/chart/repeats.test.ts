import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { type Repeat, repeatsOf } from '../../../shared/chart/repeats.ts';
import type { StartCorner } from '../../../shared/design/schema.ts';
import { designFromLetters } from '../../notation.ts';

/** 'rows 1-2: cords 1-4, 3 times, 2 over', all from 1. */
function told({ fromRow, toRow, fromColumn, columns, times, leftOver }: Repeat): string {
  return `rows ${fromRow + 1}-${toRow + 1}: cords ${fromColumn + 1}-${fromColumn + columns}, ${times} times, ${leftOver} over`;
}

function repeatsIn(letters: string[], startCorner: StartCorner = 'top-left'): string[] {
  return repeatsOf({ ...flatten(designFromLetters(letters)), startCorner }).map(told);
}

describe('repeats across', () => {
  it('are bands of rows in which the same cords come again', () => {
    expect(repeatsIn(['abaaaaaa', 'aabbaabb', 'abbaabba', 'abcaaaaa'])).toEqual([]);
    expect(repeatsIn(['abaaaaaaaaaa', 'aabbaabbaabb', 'abbaabbaabba', 'abcaaaaaaaaa'])).toEqual([
      'rows 2-3: cords 1-4, 3 times, 0 over',
    ]);
  });

  it('begin on the side where row 1 starts, and tell what is left over on the other one', () => {
    const letters = ['aabaabaabaa', 'babbabbabba'];
    expect(repeatsIn(letters)).toEqual(['rows 1-2: cords 1-3, 3 times, 2 over']);
    expect(repeatsIn(letters, 'top-right')).toEqual(['rows 1-2: cords 9-11, 3 times, 2 over']);
  });

  it('are of the fewest cords that repeat in every row', () => {
    expect(repeatsIn(['abababababab', 'babababababa'])).toEqual(['rows 1-2: cords 1-2, 6 times, 0 over']);
    expect(repeatsIn(['abababababab', 'aabbaabbaabb'])).toEqual(['rows 1-2: cords 1-4, 3 times, 0 over']);
    expect(repeatsIn(['abababababababababab', 'aabaabaabaabaabaabaa'])).toEqual([
      'rows 1-2: cords 1-6, 3 times, 2 over',
    ]);
  });

  it('hold rows of one yarn between rows that change, and neither begin nor end with them', () => {
    expect(repeatsIn(['aaaaaa', 'ababab', 'cccccc', 'bababa', 'aaaaaa'])).toEqual([
      'rows 2-4: cords 1-2, 3 times, 0 over',
    ]);
    expect(repeatsIn(['aaaaaa', 'bbbbbb', 'aaaaaa'])).toEqual([]);
    expect(repeatsIn(['aaaaaa', 'ababab', 'aaaaaa'])).toEqual([]);
  });

  it('are not one of a longer period across rows of one yarn', () => {
    const plain = 'a'.repeat(18);
    const twos = 'ab'.repeat(9);
    const threes = 'aab'.repeat(6);
    expect(repeatsIn([twos, twos, plain, threes, threes])).toEqual([
      'rows 1-2: cords 1-2, 9 times, 0 over',
      'rows 4-5: cords 1-3, 6 times, 0 over',
    ]);
    expect(repeatsIn([twos, twos, plain, twos, twos])).toEqual(['rows 1-5: cords 1-2, 9 times, 0 over']);
  });

  it('may lie within a border of the same width on both sides', () => {
    const rows = ['cdabcabcabcabcdc', 'cdbcabcabcabcadc'];
    expect(repeatsIn(['cccccccccccccccc', 'cddddddddddddddc', ...rows, 'cccccccccccccccc'])).toEqual([
      'rows 3-4: cords 3-5, 4 times, 0 over',
    ]);
    expect(repeatsIn(rows, 'top-right')).toEqual(['rows 1-2: cords 12-14, 4 times, 0 over']);
    // What is left over is a part of the frame, not of the border.
    const over = ['cabcabcabcabcac', 'cbcabcabcabcabc'];
    expect(repeatsIn(over)).toEqual(['rows 1-2: cords 2-4, 4 times, 1 over']);
  });

  it('are those of whole rows where there are such', () => {
    expect(repeatsIn(['abababababab', 'babababababa'])).toEqual(['rows 1-2: cords 1-2, 6 times, 0 over']);
  });

  it('count bare cords as a colour', () => {
    expect(repeatsIn(['a--a--a--', '-aa-aa-aa'])).toEqual(['rows 1-2: cords 1-3, 3 times, 0 over']);
  });

  it('are none on two repeats, nor on a hanging too narrow for three', () => {
    expect(repeatsIn(['aabaab', 'abbabb'])).toEqual([]);
    expect(repeatsIn(['abab', 'baba'])).toEqual([]);
    expect(repeatsIn(['a', 'b'])).toEqual([]);
  });
});
