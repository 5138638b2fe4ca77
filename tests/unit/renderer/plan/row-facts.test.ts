import { describe, expect, it } from 'vitest';
import { rowFacts, worstRows } from '../../../../renderer/plan/plans/row-facts.ts';
import { tablesOf } from './tables-of.ts';

const { order } = tablesOf(['aabba', 'aabba', '-----', 'bbbbb'], { workingLengthMm: 300 });

describe('what a row takes', () => {
  it('is what hangs below it, how often the strand in hand changes, and the pieces that begin', () => {
    expect(rowFacts(order)).toEqual([
      { row: 1, live: 2, changes: 2, pieces: 2 },
      { row: 2, live: 0, changes: 2, pieces: 1 },
      { row: 3, live: 0, changes: 0, pieces: 0 },
      // A join is the same strand.
      { row: 4, live: 0, changes: 0, pieces: 2 },
    ]);
  });

  it('ranks rows by one measure, then by the others, and leaves out those that take nothing of it', () => {
    const facts = rowFacts(order);
    expect(worstRows(facts, 'live').map(({ row }) => row)).toEqual([1]);
    expect(worstRows(facts, 'changes').map(({ row }) => row)).toEqual([1, 2]);
    expect(worstRows(facts, 'pieces').map(({ row }) => row)).toEqual([1, 4, 2]);
  });

  it('names no more rows than can be read at a glance', () => {
    const many = Array.from({ length: 40 }, (_, i) => ({ row: i + 1, live: 1, changes: i, pieces: 0 }));
    expect(worstRows(many, 'changes').map(({ row }) => row)).toEqual(
      Array.from({ length: 12 }, (_, i) => 40 - i),
    );
  });
});
