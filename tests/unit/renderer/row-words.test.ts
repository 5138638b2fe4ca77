import { describe, expect, it } from 'vitest';
import { rowsInWords } from '../../../renderer/draw/rows-text/row-words.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import { designFromLetters } from '../../notation.ts';

describe('rows of the chart in words', () => {
  const design = designFromLetters(['aab', 'b.-', 'ccc']);
  const rows = (first: number, count: number) => rowsInWords(flatten(design), design.yarns, first, count);

  it('read each row in the order in which it is tied', () => {
    expect(rows(0, 1)).toEqual(['Row 1, left to right: 2 Linen (1-2), 1 Dusk (3); lift 3.']);
    expect(rows(1, 1)).toEqual(['Row 2, right to left: 2 bare (3-2), 1 Dusk (1); lift 1.']);
  });

  it('end where the chart ends', () => {
    expect(rows(2, 40)).toHaveLength(1);
    expect(rows(3, 40)).toEqual([]);
  });
});
