import { describe, expect, it } from 'vitest';
import { copyStrips } from '../../../../shared/chart/symmetry/copy-strips.ts';
import { centreOf } from '../../../../shared/chart/symmetry/sound-symmetry.ts';
import { noSymmetry, type PointKind, type Symmetry } from '../../../../shared/chart/symmetry/symmetry.ts';
import { EMPTY } from '../../../../shared/design/codes.ts';
import { lettersOfStrips, stripsOfLetters } from '../symmetry-letters.ts';

/** What the letters become with a symmetry about the middle of the chart, or as `rest` says. */
function copied(rows: readonly string[], rest: Partial<Symmetry>): string[] {
  const size = { columns: rows[0]!.length, rows: rows.length };
  const symmetry = { ...noSymmetry, centre: centreOf(size), ...rest };
  return lettersOfStrips(copyStrips(stripsOfLetters(rows), symmetry, size), size);
}

describe('two knots in the top left corner, copied about the middle of the chart', () => {
  const drawn = ['ab...', '.....', '.....', '.....', '.....'];
  const becomes: Record<PointKind, readonly string[]> = {
    none: drawn,
    'mirror-left-right': ['ab.ba', '.....', '.....', '.....', '.....'],
    'mirror-top-bottom': ['ab...', '.....', '.....', '.....', 'ab...'],
    'mirror-both': ['ab.ba', '.....', '.....', '.....', 'ab.ba'],
    'mirror-diagonal': ['ab...', 'b....', '.....', '.....', '.....'],
    'mirror-antidiagonal': ['ab...', '.....', '.....', '....b', '....a'],
    'mirror-diagonals': ['ab...', 'b....', '.....', '....b', '...ba'],
    'half-turn': ['ab...', '.....', '.....', '.....', '...ba'],
    'quarter-turn': ['ab..a', '....b', '.....', 'b....', 'a..ba'],
    'quarter-turn-mirrored': ['ab.ba', 'b...b', '.....', 'b...b', 'ab.ba'],
  };
  for (const [point, rows] of Object.entries(becomes) as [PointKind, readonly string[]][]) {
    it(`become ${rows.join(' ')} with ${point}`, () => {
      expect(copied(drawn, { point })).toEqual(rows);
    });
  }
});

describe('the centre', () => {
  it('on a cord does not double it', () => {
    expect(copied(['abc..'], { point: 'mirror-left-right' })).toEqual(['abcba']);
  });

  it('between two cords doubles what lies beside it', () => {
    expect(copied(['abc...'], { point: 'mirror-left-right' })).toEqual(['abccba']);
  });

  it('may be moved, and what falls outside the chart is left out', () => {
    const onCord2 = { acrossHalves: 3, downHalves: 1 };
    expect(copied(['..ab..'], { point: 'mirror-left-right', centre: onCord2 })).toEqual(['a.ab..']);
  });

  it('is moved by half a cell where a quarter turn would bring cells between cells', () => {
    const rows = ['a....', '.....', '.....', '.....'];
    expect(copied(rows, { point: 'quarter-turn' })).toEqual(['a..a.', '.....', '.....', 'a..a.']);
  });
});

describe('what was drawn', () => {
  it('lies on top of its images', () => {
    expect(copied(['abcd.'], { point: 'mirror-left-right' })).toEqual(['abcda']);
    expect(copied(['ab', 'c.'], { point: 'quarter-turn-mirrored' }).join(' ')).toMatch(/^ab c.$/);
  });

  it('may be empty: unpicking is copied too', () => {
    const size = { columns: 3, rows: 3 };
    for (const point of ['mirror-left-right', 'quarter-turn'] as const) {
      const symmetry: Symmetry = { ...noSymmetry, point, centre: centreOf(size) };
      const picture = stripsOfLetters(['aaa', 'aaa', 'aaa']);
      const unpicked = copyStrips(Int32Array.from([0, 0, 1, EMPTY]), symmetry, size);
      const both = Int32Array.from([...picture, ...unpicked]);
      expect(lettersOfStrips(both, size)[0]).toBe('.a.');
    }
  });

  it('is copied into the chart from beyond its edge', () => {
    const size = { columns: 4, rows: 1 };
    const symmetry: Symmetry = {
      ...noSymmetry,
      point: 'mirror-left-right',
      centre: { acrossHalves: 2, downHalves: 1 },
    };
    expect(lettersOfStrips(copyStrips(Int32Array.from([0, -2, 1, 1]), symmetry, size), size)).toEqual([
      '...a',
    ]);
  });

  it('is handed back as it is where nothing is copied', () => {
    const strips = stripsOfLetters(['a.b']);
    expect(copyStrips(strips, noSymmetry, { columns: 3, rows: 1 })).toBe(strips);
  });
});

describe('strips', () => {
  const size = { columns: 400, rows: 600 };
  const whole = Int32Array.from({ length: size.rows * 4 }, (_, i) => [i >> 2, 0, size.columns, 1][i % 4]!);
  const count = (rest: Partial<Symmetry>) =>
    copyStrips(whole, { ...noSymmetry, centre: centreOf(size), ...rest }, size).length / 4;

  it('stay one strip each when mirrored', () => {
    expect(count({ point: 'mirror-both' })).toBe(4 * 600);
  });

  it('of a filled area stay few when turned', () => {
    // Turned about its middle, the chart covers 400 of its own rows; both quarter turns do, and the half turn all 600.
    expect(count({ point: 'quarter-turn' })).toBe(400 + 600 + 400 + 600);
  });

  it('of a filled area stay few when repeated, however short the period', () => {
    expect(count({ repeat: 'translation', periodColumns: 1, periodRows: 1 })).toBe(600 + 600);
  });
});

describe('repeats', () => {
  it('follow the periods across and down, on all sides of what was drawn', () => {
    const rows = ['.......', '..ab...', '.......', '.......'];
    expect(copied(rows, { repeat: 'translation', periodColumns: 3, periodRows: 2 })).toEqual([
      '.......',
      'b.ab.ab',
      '.......',
      'b.ab.ab',
    ]);
  });

  it('of a half drop stand half a period lower in every other column', () => {
    const rows = ['a.......', '........', '........', '........', '........'];
    expect(copied(rows, { repeat: 'half-drop', periodColumns: 2, periodRows: 4 })).toEqual([
      'a...a...',
      '........',
      '..a...a.',
      '........',
      'a...a...',
    ]);
  });

  it('of a half drop go by an even number of rows', () => {
    const rows = ['a...', '....', '....', '....', '....'];
    const three = copied(rows, { repeat: 'half-drop', periodColumns: 2, periodRows: 3 });
    expect(three).toEqual(copied(rows, { repeat: 'half-drop', periodColumns: 2, periodRows: 4 }));
  });

  it('go together with mirrors: the mirrored motif is repeated', () => {
    const centre = { acrossHalves: 4, downHalves: 1 };
    const together = {
      point: 'mirror-left-right',
      repeat: 'translation',
      periodColumns: 4,
      periodRows: 1,
    } as const;
    expect(copied(['ab........'], { ...together, centre })).toEqual(['abbaabbaab']);
  });

  it('of a turned motif are square', () => {
    const rows = ['ab......', '........', '........', '........'];
    const centre = { acrossHalves: 4, downHalves: 4 };
    const together = {
      point: 'quarter-turn',
      repeat: 'translation',
      periodColumns: 4,
      periodRows: 3,
    } as const;
    expect(copied(rows, { ...together, centre })).toEqual(['ab.aab.a', '...b...b', 'b...b...', 'a.baa.ba']);
  });

  it('of a stroke longer than the period cover the row', () => {
    expect(copied(['.....aaaa'], { repeat: 'translation', periodColumns: 3, periodRows: 1 })).toEqual([
      'aaaaaaaaa',
    ]);
  });
});
