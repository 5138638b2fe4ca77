import { describe, expect, it } from 'vitest';
import { textSizeInWords } from '../../../../renderer/draw/options/text-size-in-words.ts';

const chart = { columns: 60, rows: 40 };

describe('the size of a text', () => {
  it.each([
    [60, 40, '60 × 40 cells'],
    [799, 11, '799 × 11 cells, wider than the 60 cords'],
    [60, 41, '60 × 41 cells, higher than the 40 rows'],
    [61, 41, '61 × 41 cells, wider than the 60 cords and higher than the 40 rows'],
  ])(
    'of %i x %i cells on 60 cords and 40 rows is told as its size and where it is too large',
    (columns, rows, words) => {
      expect(textSizeInWords({ columns, rows }, chart)).toBe(words);
    },
  );

  it('counts a single cord and row as one', () => {
    expect(textSizeInWords({ columns: 3, rows: 5 }, { columns: 1, rows: 1 })).toBe(
      '3 × 5 cells, wider than the one cord and higher than the one row',
    );
  });
});
