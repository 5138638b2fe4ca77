import { describe, expect, it } from 'vitest';
import { nextSteps } from '../../../../renderer/plan/plans/next-steps.ts';
import { tablesOf } from './tables-of.ts';

const { order } = tablesOf(['aabba', 'aabba', '-----', 'bbbbb'], { workingLengthMm: 300 });
const kinds = (knots: number) => nextSteps(order, knots).map(({ kind }) => kind);

describe('what is done next', () => {
  it('begins with the row itself where nothing of it is tied', () => {
    expect(kinds(0)).toEqual(['row', 'attach', 'knots', 'leave', 'attach']);
  });

  it('goes on with the knots that are tied in part', () => {
    const [first] = nextSteps(order, 1);
    expect(first).toMatchObject({ kind: 'knots', knotsBefore: 0, count: 2 });
  });

  it('begins with what comes right after the last knot', () => {
    expect(kinds(2).slice(0, 3)).toEqual(['leave', 'attach', 'knots']);
  });

  it('passes over bare rows, into the next row that is tied', () => {
    expect(nextSteps(order, 9).map(({ kind, row }) => `${kind} ${row}`)).toEqual([
      'knots 2',
      'end 2',
      'row 4',
      'attach 4',
      'knots 4',
    ]);
  });

  it('ends a strand before the next row begins', () => {
    expect(nextSteps(order, 10).map(({ kind, row }) => `${kind} ${row}`)).toEqual([
      'end 2',
      'row 4',
      'attach 4',
      'knots 4',
      'join 4',
    ]);
  });

  it('is nothing where all is tied', () => {
    expect(nextSteps(order, 15)).toEqual([]);
  });
});
