import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { BARE } from '../../../../shared/design/codes.ts';
import { nextInRow } from '../../../../shared/tying/rows/next-in-row.ts';
import { designFromLetters } from '../../../notation.ts';

describe('what comes next in a row', () => {
  const chart = flatten(designFromLetters(['aabb-c', 'aabb-c']));

  it('goes right in row 1 and left in row 2, from the start corner top left', () => {
    expect(nextInRow(chart, { row: 0, column: 1 })).toEqual([
      { code: 2, count: 2 },
      { code: BARE, count: 1 },
      { code: 3, count: 1 },
    ]);
    expect(nextInRow(chart, { row: 1, column: 3 })).toEqual([{ code: 1, count: 2 }]);
  });

  it('is nothing in the row’s last stretch', () => {
    expect(nextInRow(chart, { row: 0, column: 5 })).toEqual([]);
    expect(nextInRow(chart, { row: 1, column: 0 })).toEqual([]);
  });
});
