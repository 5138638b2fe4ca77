import { describe, expect, it } from 'vitest';
import { bareColumns, markBare } from '../../../../renderer/surface/bare-columns.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import { designFromLetters } from '../../../notation.ts';

const chartOf = (rows: readonly string[]) => flatten(designFromLetters(rows));

describe('the cords that show between knots', () => {
  it('are those of every column with a bare cell', () => {
    expect([...bareColumns(chartOf(['a-aa', 'aaa-', 'a-aa']))]).toEqual([0, 1, 0, 1]);
  });

  it('become more when a cell is unpicked, and are told only once', () => {
    const bare = bareColumns(chartOf(['aaa', 'aaa']));
    const unpicked = chartOf(['aaa', 'aa-']);
    const block = { left: 2, top: 1, right: 2, bottom: 1 };
    expect(markBare(bare, unpicked, block)).toBe(true);
    expect(markBare(bare, unpicked, block)).toBe(false);
    expect([...bare]).toEqual([0, 0, 1]);
  });
});
