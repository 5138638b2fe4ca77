import { describe, expect, it } from 'vitest';
import { steppedKnots, type TyingStep, tyingPlace } from '../../../../renderer/plan/plans/tying-place.ts';
import { tablesOf } from './tables-of.ts';

// Runs of 2, 2 and 1 knots, back with 1, 2 and 2; a bare row; 4 knots, a join, and the last one.
const { tables } = tablesOf(['aabba', 'aabba', '-----', 'bbbbb'], { workingLengthMm: 300 });
const all = 15;

describe('a place in the tying order', () => {
  it('is the knot that comes next, in its row’s direction', () => {
    expect(tyingPlace(tables, 0)).toMatchObject({ row: 0, column: 0 });
    expect(tyingPlace(tables, 3)).toMatchObject({ row: 0, column: 3 });
    expect(tyingPlace(tables, 7)).toMatchObject({ row: 1, column: 2 });
    expect(tyingPlace(tables, 10)).toMatchObject({ row: 3, column: 4 });
  });

  it('counts the strands that are begun and not ended', () => {
    const live = Array.from({ length: all + 1 }, (_, knots) => tyingPlace(tables, knots).live);
    expect(live).toEqual([0, 1, 1, 2, 2, 2, 1, 1, 0, 1, 0, 1, 1, 1, 1, 0]);
  });

  it('has no next knot where all are tied, however many are asked for', () => {
    expect(tyingPlace(tables, all)).toEqual({ knots: all, stretch: 8, row: 3, column: null, live: 0 });
    expect(tyingPlace(tables, 99)).toEqual(tyingPlace(tables, all));
    expect(tyingPlace(tables, -1)).toEqual(tyingPlace(tables, 0));
  });
});

describe('going through the tying order', () => {
  const way = (from: number, step: TyingStep) => {
    const places = [from];
    for (let knots = from; ; ) {
      const next = steppedKnots(tables, knots, step);
      if (next === knots) return places;
      places.push(next);
      knots = next;
    }
  };

  it('goes run by run to the end, and back to the first knot', () => {
    expect(way(0, 'next-run')).toEqual([0, 2, 4, 5, 6, 8, 10, 14, 15]);
    expect(way(all, 'run-before')).toEqual([15, 14, 10, 8, 6, 5, 4, 2, 0]);
  });

  it('goes row by row, past bare ones', () => {
    expect(way(0, 'next-row')).toEqual([0, 5, 10, 15]);
    expect(way(all, 'row-before')).toEqual([15, 10, 5, 0]);
  });

  it('goes back to where a run or row begins first, from within it', () => {
    expect(steppedKnots(tables, 12, 'run-before')).toBe(10);
    expect(steppedKnots(tables, 7, 'row-before')).toBe(5);
  });
});
