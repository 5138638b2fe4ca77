import { describe, expect, it } from 'vitest';
import { type Tiling, tiledStrips } from '../../../../shared/chart/patch/tiled-strips.ts';
import { blockFromLetters, lettersOfStrips } from '../strips-letters.ts';

const size = { columns: 8, rows: 6 };
const all = { top: 0, left: 0, bottom: 5, right: 7 };
const plain: Tiling = { at: { row: 0, column: 0 }, columnGap: 0, rowGap: 0, drop: 'none' };
const block = blockFromLetters(['ab', 'c.']);

describe('tiles', () => {
  it('repeat a block side by side and one below another', () => {
    expect(lettersOfStrips(tiledStrips(block, all, plain), size)).toEqual([
      'abababab',
      'c.c.c.c.',
      'abababab',
      'c.c.c.c.',
      'abababab',
      'c.c.c.c.',
    ]);
  });

  it('follow from any cell in all directions, and are cut at the edges of the area', () => {
    const over = { top: 1, left: 1, bottom: 4, right: 5 };
    const tiling: Tiling = { ...plain, at: { row: 2, column: 2 } };
    expect(lettersOfStrips(tiledStrips(blockFromLetters(['abc', 'def']), over, tiling), size)).toEqual([
      '........',
      '.fdefd..',
      '.cabca..',
      '.fdefd..',
      '.cabca..',
      '........',
    ]);
  });

  it('may stand apart', () => {
    expect(lettersOfStrips(tiledStrips(block, all, { ...plain, columnGap: 1, rowGap: 2 }), size)).toEqual([
      'ab.ab.ab',
      'c..c..c.',
      '........',
      '........',
      'ab.ab.ab',
      'c..c..c.',
    ]);
  });

  it('may hang half a repeat lower in every other column of tiles', () => {
    const stripes = blockFromLetters(['aa', 'bb', 'cc', 'dd']);
    const over = { ...all, left: 1 };
    const tiling: Tiling = { ...plain, drop: 'half', at: { row: 0, column: 2 } };
    expect(lettersOfStrips(tiledStrips(stripes, over, tiling), size)).toEqual([
      '.caaccaa',
      '.dbbddbb',
      '.accaacc',
      '.bddbbdd',
      '.caaccaa',
      '.dbbddbb',
    ]);
  });

  it('hang one row lower where the repeat has three rows', () => {
    const stripes = blockFromLetters(['a', 'b', 'c']);
    expect(lettersOfStrips(tiledStrips(stripes, all, { ...plain, drop: 'half' }), size).slice(0, 3)).toEqual([
      'acacacac',
      'babababa',
      'cbcbcbcb',
    ]);
  });

  it('of a block without cells are none', () => {
    expect(tiledStrips({ columns: 0, rows: 0, cells: new Uint8Array(0) }, all, plain)).toHaveLength(0);
  });
});
