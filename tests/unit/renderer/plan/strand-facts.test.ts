import { describe, expect, it } from 'vitest';
import { strandWords } from '../../../../renderer/plan/plan-words.ts';
import { longCarries } from '../../../../renderer/plan/plans/long-carries.ts';
import { strandAt, strandBeside, strandFacts } from '../../../../renderer/plan/plans/strand-facts.ts';
import { tablesOf } from './tables-of.ts';

const { tables } = tablesOf(['aabba', 'aabba', '-----', 'bbbbb'], { workingLengthMm: 300 });
const wordsOf = (strand: number) => strandWords(strandFacts(tables, strand), 'Moss', 'metric', false);

describe('a strand', () => {
  it('is told in a sentence: its pieces, rows, knots and length, its carries, and where it ends', () => {
    expect(wordsOf(0)).toBe(
      'Moss, strand 1: piece 1, rows 1 to 2, 4 knots, 0.3 m; carried once, 3 cords; ends at row 2, cord 5',
    );
    expect(wordsOf(3)).toBe(
      'Moss, strand 2: pieces 2-3, row 4, 5 knots, 0.4 m; never carried; ends at row 4, cord 1',
    );
  });

  it('is an estimate where no swatch was measured', () => {
    expect(strandWords(strandFacts(tables, 0), 'Moss', 'metric', true)).toContain('≈ 0.3 m');
  });

  it('counts its turns apart from its carries', () => {
    expect(strandFacts(tables, 1)).toMatchObject({ carries: 0, turns: 1, longestCords: 0 });
  });

  it('is found by any of its knots, and by no bare cell', () => {
    expect(strandAt(tables, { row: 0, column: 4 })).toBe(0);
    expect(strandAt(tables, { row: 1, column: 2 })).toBe(1);
    expect(strandAt(tables, { row: 2, column: 2 })).toBeNull();
    expect(strandAt(tables, { row: 9, column: 9 })).toBeNull();
  });

  it('has neighbours of its own yarn, round and round', () => {
    expect([0, 1, 2, 3].map((strand) => strandBeside(tables, strand, 1))).toEqual([2, 3, 0, 1]);
    expect(strandBeside(tables, 0, -1)).toBe(2);
    const lone = tablesOf(['ab']).tables;
    expect(strandBeside(lone, 0, 1)).toBe(0);
  });
});

describe('carries over a length', () => {
  it('are named from the longest to the shortest, turns left out', () => {
    const { tables: shaded } = tablesOf(['aabbaaab', 'aabbaaab']);
    const found = longCarries(shaded, 5);
    expect(found.length).toBeGreaterThan(1);
    expect(found.map(({ mm }) => mm)).toEqual(found.map(({ mm }) => mm).toSorted((a, b) => b - a));
    expect(found.every(({ stretch }) => shaded.stretches.carryMm[stretch]! > 5)).toBe(true);
  });

  it('are none where the length is that of the longest', () => {
    expect(longCarries(tables, 15.7)).toHaveLength(1);
    expect(longCarries(tables, 15.8)).toEqual([]);
  });
});
