import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../../shared/chart/tools/cell.ts';
import { squared } from '../../../../shared/chart/tools/squared.ts';
import { straightened } from '../../../../shared/chart/tools/straightened.ts';

const cell = (row: number, column: number): Cell => ({ row, column });
const from = cell(10, 10);

describe('a line held straight', () => {
  const square = (to: Cell) => straightened(from, to, 5, 5);

  it('is level, upright or at a slope of one cell to one, whichever is nearest', () => {
    expect(square(cell(11, 17))).toEqual(cell(10, 17));
    expect(square(cell(2, 9))).toEqual(cell(2, 10));
    expect(square(cell(15, 14))).toEqual(cell(15, 15));
    expect(square(cell(6, 13))).toEqual(cell(6, 14));
    expect(square(cell(6, 7))).toEqual(cell(6, 6));
    expect(square(from)).toEqual(from);
  });

  it('goes by the angle that is seen: rows twice as high as cords are apart turn it upright sooner', () => {
    // Two across and three down: 56 degrees where cells are square, between 45 and 90; 72 where rows are twice as
    // high, and there the slope of one cell to one is at 63. Worked out from the tangents.
    expect(straightened(from, cell(13, 12), 5, 5)).toEqual(cell(13, 13));
    expect(straightened(from, cell(13, 12), 5, 10)).toEqual(cell(13, 13));
    expect(straightened(from, cell(15, 12), 5, 5)).toEqual(cell(15, 10));
    expect(straightened(from, cell(14, 12), 5, 10)).toEqual(cell(14, 14));
    expect(straightened(from, cell(15, 11), 5, 10)).toEqual(cell(15, 10));
    // 27 degrees in low cells: nearer to their slope, at 27, than to level.
    expect(straightened(from, cell(11, 11), 10, 5)).toEqual(cell(11, 11));
    // 14 degrees: nearer to level where cells are square, to the slope where they are low.
    expect(straightened(from, cell(11, 14), 5, 5)).toEqual(cell(10, 14));
    expect(straightened(from, cell(12, 14), 10, 5)).toEqual(cell(14, 14));
  });
});

describe('a box held square', () => {
  it('has as many rows as columns where cells are square', () => {
    expect(squared(from, cell(12, 15), 5, 5)).toEqual(cell(15, 15));
    expect(squared(from, cell(2, 9), 5, 5)).toEqual(cell(2, 2));
    expect(squared(from, from, 5, 5)).toEqual(from);
  });

  it('has sides alike in mm where they are not, as near as whole cells allow', () => {
    // 6 cords of 5 mm are 30 mm: 6.25 rows of 4.8 mm.
    expect(squared(from, cell(10, 15), 5, 4.8)).toEqual(cell(15, 15));
    // 20 cords are 100 mm: 20.8 rows.
    expect(squared(from, cell(9, 29), 5, 4.8)).toEqual(cell(-10, 29));
    // 10 rows of 4 mm are 40 mm: 5 cords of 8 mm.
    expect(squared(from, cell(19, 8), 8, 4)).toEqual(cell(19, 6));
    // One cord is wider than three rows are high.
    expect(squared(from, cell(11, 10), 9, 3)).toEqual(cell(12, 10));
  });
});
