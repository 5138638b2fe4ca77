import { describe, expect, it } from 'vitest';
import { axesOf } from '../../../../shared/chart/symmetry/axes.ts';
import { centreOf } from '../../../../shared/chart/symmetry/sound-symmetry.ts';
import { noSymmetry, type Symmetry } from '../../../../shared/chart/symmetry/symmetry.ts';

const size = { columns: 8, rows: 6 };
const axes = (rest: Partial<Symmetry>) => axesOf({ ...noSymmetry, centre: centreOf(size), ...rest }, size);

describe('the axes that the screen draws', () => {
  it('are none without symmetry', () => {
    expect(axes({})).toEqual({ mirrors: [], centres: [], grid: [] });
  });

  it('are an upright line through the middle of a cord for a mirror on it', () => {
    const onCord3 = { acrossHalves: 5, downHalves: 0 };
    expect(axes({ point: 'mirror-left-right', centre: onCord3 })).toEqual({
      mirrors: [{ x1: 2.5, y1: 0, x2: 2.5, y2: 6 }],
      centres: [],
      grid: [],
    });
  });

  it('are a centre alone for turns', () => {
    expect(axes({ point: 'quarter-turn' })).toEqual({ mirrors: [], centres: [{ x: 4, y: 3 }], grid: [] });
  });

  it('end at the edges of the chart where they slant', () => {
    expect(axes({ point: 'mirror-diagonals' }).mirrors).toEqual([
      { x1: 1, y1: 0, x2: 7, y2: 6 },
      { x1: 1, y1: 6, x2: 7, y2: 0 },
    ]);
  });

  it('are four mirrors and a centre for quarter turns with mirrors', () => {
    const { mirrors, centres } = axes({ point: 'quarter-turn-mirrored' });
    expect(mirrors).toHaveLength(4);
    expect(centres).toEqual([{ x: 4, y: 3 }]);
  });
});

describe('the edges of repeats', () => {
  it('stand a period apart, the centre in the middle of one', () => {
    expect(axes({ repeat: 'translation', periodColumns: 4, periodRows: 4 }).grid).toEqual([
      { x1: 2, y1: 0, x2: 2, y2: 6 },
      { x1: 6, y1: 0, x2: 6, y2: 6 },
      { x1: 0, y1: 1, x2: 8, y2: 1 },
      { x1: 0, y1: 5, x2: 8, y2: 5 },
    ]);
  });

  it('lie between cords where nothing is mirrored or turned, and on second mirrors where it is', () => {
    const odd = { repeat: 'translation', periodColumns: 5, periodRows: 6 } as const;
    expect(axes(odd).grid[0]!.x1).toBe(1);
    expect(axes({ ...odd, point: 'mirror-left-right' }).grid[0]!.x1).toBe(1.5);
  });

  it('are half a period lower in every other column of a half drop', () => {
    const { grid } = axes({ repeat: 'half-drop', periodColumns: 4, periodRows: 4 });
    expect(grid.filter(({ y1, y2 }) => y1 === y2)).toEqual([
      { x1: 0, y1: 3, x2: 2, y2: 3 },
      { x1: 2, y1: 1, x2: 6, y2: 1 },
      { x1: 2, y1: 5, x2: 6, y2: 5 },
      { x1: 6, y1: 3, x2: 8, y2: 3 },
    ]);
  });

  it('are those of one repeat only, where all would hide the chart', () => {
    const large = { columns: 1000, rows: 2000 };
    const symmetry: Symmetry = {
      ...noSymmetry,
      centre: centreOf(large),
      repeat: 'half-drop',
      periodColumns: 2,
      periodRows: 4,
    };
    expect(axesOf(symmetry, large).grid).toEqual([
      { x1: 499, y1: 998, x2: 501, y2: 998 },
      { x1: 501, y1: 998, x2: 501, y2: 1002 },
      { x1: 499, y1: 1002, x2: 501, y2: 1002 },
      { x1: 499, y1: 998, x2: 499, y2: 1002 },
    ]);
  });
});
