import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { StartCorner } from '../../../../shared/design/schema.ts';
import { writtenRows, writtenRowText } from '../../../../shared/tying/rows/written-rows.ts';
import { designFromLetters } from '../../../notation.ts';

const names = ['Moss', 'Bark', 'Fern'];

function written(letters: string[], startCorner: StartCorner = 'top-left'): string[] {
  const design = designFromLetters(letters, { startCorner });
  const named = design.yarns.map((yarn, i) => ({ ...yarn, name: names[i] ?? yarn.name }));
  return writtenRows(flatten(design), new Map(named.map((yarn) => [yarn.id, yarn]))).map((row) =>
    writtenRowText(row),
  );
}

describe('a written row', () => {
  it('counts from the side where the row starts and names the cords to lift', () => {
    // Practice: the example that makers' conventions give for 16 cords.
    const rows = [...Array(7).fill('aaaaaaaaaaaaaaaa'), 'aaaaaaaaabbaaaaa'];
    expect(written(rows)[7]).toBe(
      'Row 8, right to left: 5 Moss (16-12), 2 Bark (11-10), 9 Moss (9-1); lift 11, 9',
    );
  });

  it('of one yarn lifts nothing', () => {
    expect(written(['aaa', 'bbb'])).toEqual([
      'Row 1, left to right: 3 Moss (1-3)',
      'Row 2, right to left: 3 Bark (3-1)',
    ]);
  });

  it('gives a single cord alone', () => {
    expect(written(['abca'])).toEqual([
      'Row 1, left to right: 1 Moss (1), 1 Bark (2), 1 Fern (3), 1 Moss (4); lift 2, 3, 4',
    ]);
  });

  it('says what stays bare, and lifts the cord where yarn begins again', () => {
    expect(written(['aa--aa'])).toEqual([
      'Row 1, left to right: 2 Moss (1-2), 2 bare (3-4), 2 Moss (5-6); lift 5',
    ]);
    expect(written(['--aaa-'])).toEqual([
      'Row 1, left to right: 2 bare (1-2), 3 Moss (3-5), 1 bare (6); lift 3',
    ]);
  });

  it('says where nothing is tied, and goes on in the other direction', () => {
    expect(written(['aa', '--', 'aa'])).toEqual([
      'Row 1, left to right: 2 Moss (1-2)',
      'Row 2, right to left: all bare, nothing to tie',
      'Row 3, left to right: 2 Moss (1-2)',
    ]);
  });

  it('goes left first where the maker starts top right', () => {
    expect(written(['aab'], 'top-right')).toEqual(['Row 1, right to left: 1 Bark (3), 2 Moss (2-1); lift 2']);
  });
});
