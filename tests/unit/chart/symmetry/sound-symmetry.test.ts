import { describe, expect, it } from 'vitest';
import { pointKinds, repeatKinds } from '../../../../shared/chart/symmetry/kinds.ts';
import { centreOf, soundCentre, soundPeriods } from '../../../../shared/chart/symmetry/sound-symmetry.ts';
import { noSymmetry, type Symmetry } from '../../../../shared/chart/symmetry/symmetry.ts';

const size = { columns: 10, rows: 7 };

function withCentre(point: Symmetry['point'], acrossHalves: number, downHalves: number): Symmetry {
  return { ...noSymmetry, point, centre: { acrossHalves, downHalves } };
}

describe('the centre of a symmetry', () => {
  it('is the middle of the chart at first: between cords 5 and 6, on row 4', () => {
    expect(centreOf(size)).toEqual({ acrossHalves: 10, downHalves: 7 });
  });

  it('may be any half cell for mirrors and half turns', () => {
    for (const point of ['mirror-both', 'half-turn'] as const) {
      expect(soundCentre(withCentre(point, 10, 7), size)).toEqual({ acrossHalves: 10, downHalves: 7 });
    }
  });

  it('lies as deep in a cord as in a row for quarter turns and diagonals', () => {
    for (const { kind } of pointKinds.filter(({ swapsCordsAndRows }) => swapsCordsAndRows)) {
      expect(soundCentre(withCentre(kind, 10, 7), size)).toEqual({ acrossHalves: 9, downHalves: 7 });
      expect(soundCentre(withCentre(kind, 4, 7), size)).toEqual({ acrossHalves: 5, downHalves: 7 });
      expect(soundCentre(withCentre(kind, 5, 7), size)).toEqual({ acrossHalves: 5, downHalves: 7 });
    }
  });

  it('stays in the chart, its edges included', () => {
    expect(soundCentre(withCentre('mirror-both', -3, 99), size)).toEqual({ acrossHalves: 0, downHalves: 14 });
    expect(soundCentre(withCentre('quarter-turn', 99, 7), size)).toEqual({ acrossHalves: 19, downHalves: 7 });
  });

  it('is rounded to a half cell', () => {
    expect(soundCentre(withCentre('half-turn', 3.4, Number.NaN), size)).toEqual({
      acrossHalves: 3,
      downHalves: 0,
    });
  });
});

describe('the periods of a repeat', () => {
  const periods = (rest: Partial<Symmetry>) => {
    const { periodColumns, periodRows } = soundPeriods({ ...noSymmetry, ...rest }, size);
    return [periodColumns, periodRows];
  };

  it('are whole cells, at least one and at most the chart', () => {
    expect(periods({ repeat: 'translation', periodColumns: 3.2, periodRows: 0 })).toEqual([3, 1]);
    expect(periods({ repeat: 'translation', periodColumns: 11, periodRows: 8 })).toEqual([10, 7]);
  });

  it('have an even number of rows with half drop', () => {
    expect(periods({ repeat: 'half-drop', periodColumns: 3, periodRows: 5 })).toEqual([3, 6]);
    expect(periods({ repeat: 'half-drop', periodColumns: 3, periodRows: 4 })).toEqual([3, 4]);
  });

  it('are square where cords change places with rows', () => {
    const turned = { point: 'quarter-turn', periodColumns: 4, periodRows: 9 } as const;
    expect(periods({ ...turned, repeat: 'translation' })).toEqual([4, 4]);
    expect(periods({ ...turned, repeat: 'half-drop' })).toEqual([4, 8]);
  });
});

describe('the tables of kinds', () => {
  it('have a label and a hint of its own for every kind', () => {
    for (const kinds of [pointKinds, repeatKinds]) {
      expect(new Set(kinds.map(({ label }) => label)).size).toBe(kinds.length);
      expect(new Set(kinds.map(({ hint }) => hint)).size).toBe(kinds.length);
    }
  });
});
