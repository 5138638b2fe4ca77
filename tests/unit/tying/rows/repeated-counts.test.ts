import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { StartCorner } from '../../../../shared/design/schema.ts';
import { compactRowText, writtenRow, writtenRowText } from '../../../../shared/tying/rows/written-rows.ts';
import { designFromLetters } from '../../../notation.ts';

function rowIn(letters: string, startCorner: StartCorner = 'top-left') {
  const design = designFromLetters([letters]);
  const chart = { ...flatten(design), startCorner };
  return { design, row: writtenRow(chart, 0, new Map(design.yarns.map((yarn) => [yarn.id, yarn]))) };
}

/** Row 1 in the short form, with the letters of the chart for its yarns. */
function short(letters: string, startCorner?: StartCorner): string {
  const { design, row } = rowIn(letters, startCorner);
  return compactRowText(row, (id) => design.yarns.find((yarn) => yarn.id === id)!.symbol);
}

describe('a short row that is the same again and again', () => {
  it('is written once, with how many times it is tied; all cords to lift are told', () => {
    expect(short('aaabbaaabbaaabb')).toBe('1 → 3×(3×a 2×b); 4 6 9 11 14');
    expect(short('aab--aab--aab--aab--')).toBe('1 → 4×(2×a 1×b 2×–); 3 6 8 11 13 16 18');
  });

  it('is written in the order in which it is tied', () => {
    expect(short('aaabbaaabbaaabb', 'top-right')).toBe('1 ← 3×(2×b 3×a); 13 10 8 5 3');
  });

  it('may begin and end with one yarn', () => {
    expect(short('abbaabbaabba')).toBe('1 → 3×(1×a 2×b 1×a); 2 4 6 8 10 12');
  });

  it('is written out where it is not a whole number of repeats, or fewer than three', () => {
    expect(short('aabbaabbaabba')).toBe('1 → 2×a 2×b 2×a 2×b 2×a 2×b 1×a; 3 5 7 9 11 13');
    expect(short('aaabbccaaabbcc')).toBe('1 → 3×a 2×b 2×c 3×a 2×b 2×c; 4 6 8 11 13');
    expect(short('aaaaaa')).toBe('1 → 6×a');
  });

  it('stays written out in whole words', () => {
    expect(writtenRowText(rowIn('ababab').row)).not.toMatch(/×|\(1 /);
    expect(writtenRowText(rowIn('ababab').row)).toContain('(1), 1 ');
  });
});
