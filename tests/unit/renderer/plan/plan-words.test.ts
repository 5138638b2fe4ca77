import { describe, expect, it } from 'vitest';
import { piecesWords, reachWords } from '../../../../renderer/plan/plan-words.ts';

describe('words of the Plan screen', () => {
  it('name pieces one by one, and neighbours as a range', () => {
    expect(piecesWords([4])).toBe('piece 4');
    expect(piecesWords([1, 2, 3])).toBe('pieces 1-3');
    expect(piecesWords([2, 5, 6, 9])).toBe('pieces 2, 5-6 and 9');
  });

  it('say how far a carry reaches, and leave out what it does not', () => {
    expect(reachWords(6, 0)).toBe('6 cords');
    expect(reachWords(1, 2)).toBe('1 cord and 2 rows down');
    expect(reachWords(0, 1)).toBe('1 row down');
  });
});
