import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { StartCorner } from '../../../shared/design/schema.ts';
import { knotsOf, runsOf } from '../../../shared/tying/runs.ts';
import { designFromLetters } from '../../notation.ts';

/** Each run as 'row: yarn first-last, knots', rows and cords from 1. */
function told(letters: string[], startCorner: StartCorner = 'top-left'): string[] {
  const runs = runsOf(flatten(designFromLetters(letters, { startCorner })));
  return Array.from(
    { length: runs.count },
    (_, i) =>
      `${runs.row[i]! + 1}: y${runs.yarn[i]} ${runs.first[i]! + 1}-${runs.last[i]! + 1}, ${knotsOf(runs, i)}`,
  );
}

describe('runs', () => {
  it('go right in row 1 and left in row 2', () => {
    expect(told(['aab', 'abb'])).toEqual(['1: y1 1-2, 2', '1: y2 3-3, 1', '2: y2 3-2, 2', '2: y1 1-1, 1']);
  });

  it('go left first where the maker starts top right', () => {
    expect(told(['aab', 'abb'], 'top-right')).toEqual([
      '1: y2 3-3, 1',
      '1: y1 2-1, 2',
      '2: y1 1-1, 1',
      '2: y2 2-3, 2',
    ]);
  });

  it('end at bare cells, and keep alternating after a bare row', () => {
    expect(told(['a-a', '---', 'aaa', 'aaa'])).toEqual([
      '1: y1 1-1, 1',
      '1: y1 3-3, 1',
      '3: y1 1-3, 3',
      '4: y1 3-1, 3',
    ]);
  });

  it('do not reach from one row into the next', () => {
    expect(told(['aaa', 'aaa', 'aaa'])).toHaveLength(3);
  });

  it('are none where everything is bare', () => {
    expect(told(['---'])).toEqual([]);
  });
});
