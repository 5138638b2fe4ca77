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

  // The angles are arc tangents; the choice turns half-way between level and the slope, and half-way from it to 90.
  it.each([
    {
      to: cell(15, 12),
      pitchMm: 5,
      rowHeightMm: 5,
      end: cell(15, 10),
      why: '68 degrees, above 67.5: upright',
    },
    {
      to: cell(14, 12),
      pitchMm: 5,
      rowHeightMm: 10,
      end: cell(14, 14),
      why: '76, below 76.7: at the slope of 63',
    },
    { to: cell(15, 12), pitchMm: 5, rowHeightMm: 10, end: cell(15, 10), why: '79: upright' },
    { to: cell(11, 14), pitchMm: 5, rowHeightMm: 5, end: cell(10, 14), why: '14 degrees, below 22.5: level' },
    {
      to: cell(12, 14),
      pitchMm: 10,
      rowHeightMm: 5,
      end: cell(14, 14),
      why: '14, above 13.3: at the slope of 27',
    },
  ])('goes by the angle that is seen: $why', ({ to, pitchMm, rowHeightMm, end }) => {
    expect(straightened(from, to, pitchMm, rowHeightMm)).toEqual(end);
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
