import { describe, expect, it } from 'vitest';
import { cutAt } from '../../../../../renderer/plan/pins/pin-place.ts';
import { cutWords } from '../../../../../renderer/plan/pins/pin-words.ts';
import { flatten } from '../../../../../shared/chart/chart.ts';
import { designFromLetters } from '../../../../notation.ts';

const chart = flatten(designFromLetters(['aabbb', 'aabbb']));
const wordsAt = (row: number, column: number) => cutWords(cutAt(chart, { row, column })!, { row, column });

describe('a cut that is asked for at a knot', () => {
  it('is told to come where the run ends, if that is another knot', () => {
    expect(wordsAt(0, 2)).toBe(
      'A cut here is after cord 5 of row 1, where the run ends: strands are cut between runs.',
    );
    // Row 2 goes to the left.
    expect(wordsAt(1, 4)).toContain('after cord 3 of row 2, where the run ends');
  });

  it('is told to come there, if the run ends with that knot', () => {
    expect(wordsAt(0, 4)).toBe('A cut here is after cord 5 of row 1.');
    expect(wordsAt(1, 2)).toBe('A cut here is after cord 3 of row 2.');
  });
});
