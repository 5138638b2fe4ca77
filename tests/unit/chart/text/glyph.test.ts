import { describe, expect, it } from 'vitest';
import { readSheet } from '../../../../shared/chart/text/glyph.ts';

describe('a sheet of letters', () => {
  it('is read letter by letter, each standing on the baseline or hanging below it', () => {
    const letters = readSheet(`
a    g
.##  .##
#.#  #.#
.##  .##
--------
...  ..#
...  ##.

-
...
###
...
`);
    expect([...letters]).toEqual([
      ['a', { columns: 3, rows: ['.##', '#.#', '.##'], rise: 3 }],
      ['g', { columns: 3, rows: ['.##', '#.#', '.##', '..#', '##.'], rise: 3 }],
      ['-', { columns: 3, rows: ['###'], rise: 2 }],
    ]);
  });

  it('is refused where a drawing is askew or a letter is drawn twice', () => {
    expect(() => readSheet('a b\n## #\n#')).toThrow('askew');
    expect(() => readSheet('a\n##\n#')).toThrow('askew');
    expect(() => readSheet('a\n#x')).toThrow('askew');
    expect(() => readSheet('a\n#\n\na\n#')).toThrow('twice');
  });
});
