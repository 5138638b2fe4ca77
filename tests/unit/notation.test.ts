import { describe, expect, it } from 'vitest';
import { faultOf } from '../../shared/design/check-design.ts';
import { designFromLetters, lettersOf } from '../notation.ts';

describe('charts as rows of letters', () => {
  it('come back as they were written, with as many yarns as they need', () => {
    const rows = ['aab', 'b.-', 'zAZ'];
    const design = designFromLetters(rows);
    expect(lettersOf(design)).toEqual(rows);
    expect(design.yarns).toHaveLength(52);
    expect(faultOf(design)).toBeNull();
  });

  it('are refused where the rows differ in length, or a letter is none', () => {
    expect(() => designFromLetters(['aab', 'b.'])).toThrow("'b.' is not 3 cells long");
    expect(() => designFromLetters(['a?b'])).toThrow("'?' is not a letter");
  });
});
