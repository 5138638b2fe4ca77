import { describe, expect, it } from 'vitest';
import { type Border, borderStrips } from '../../../../shared/chart/borders/border-strips.ts';
import { type FriezeGroup, friezeGroups } from '../../../../shared/chart/borders/frieze-groups.ts';
import type { Block } from '../../../../shared/chart/patch/block.ts';
import { designFromLetters } from '../../../notation.ts';
import { lettersOfStrips } from '../symmetry-letters.ts';

const everyEdge = { top: true, right: true, bottom: true, left: true };
const noEdge = { top: false, right: false, bottom: false, left: false };
const topEdge = { ...noEdge, top: true };

function blockOf(rows: readonly string[]): Block {
  const cells = designFromLetters(rows).layers[0]!.rows.flatMap((row) => [...row]);
  return { columns: rows[0]!.length, rows: rows.length, cells: Uint8Array.from(cells) };
}

const hook = blockOf(['abc', 'd..']);

function drawn(columns: number, rows: number, rest: Partial<Border>): string[] {
  const border: Border = {
    group: 'p1',
    motif: hook,
    edges: everyEdge,
    insetCells: 0,
    corners: 'mitred',
    ...rest,
  };
  return lettersOfStrips(borderStrips(border, { columns, rows }), { columns, rows });
}

describe('a motif along the top edge', () => {
  const becomes: Record<FriezeGroup, readonly string[]> = {
    p1: ['abcabcabcabc', 'd..d..d..d..'],
    p11g: ['abcd..abcd..', 'd..abcd..abc'],
    p1m1: ['abccbaabccba', 'd....dd....d'],
    p211: ['abc..dabc..d', 'd..cbad..cba'],
    p2mg: ['..dabccbad..', 'cbad....dabc'],
    p11m: ['abcabcabcabc', 'd..d..d..d..', 'd..d..d..d..', 'abcabcabcabc'],
    p2mm: ['abccbaabccba', 'd....dd....d', 'd....dd....d', 'abccbaabccba'],
  };
  for (const [group, rows] of Object.entries(becomes) as [FriezeGroup, readonly string[]][]) {
    it(`becomes ${rows[0]} for ${group}`, () => {
      expect(drawn(12, rows.length, { group, edges: topEdge })).toEqual(rows);
    });
  }

  it('is centred: what is left over is shared by both ends', () => {
    expect(drawn(8, 2, { group: 'p1', edges: topEdge })).toEqual(['cabcabca', '.d..d..d']);
    expect(drawn(10, 2, { group: 'p1m1', edges: topEdge })).toEqual(['baabccbaab', '.dd....dd.']);
    expect(drawn(14, 2, { group: 'p1m1', edges: topEdge })).toEqual(['aabccbaabccbaa', 'dd....dd....dd']);
  });

  it('shares the cell in the middle of an edge of odd length with its mirror image', () => {
    expect(drawn(7, 2, { group: 'p1m1', edges: topEdge })).toEqual(['aabcbaa', 'dd...dd']);
    expect(drawn(11, 2, { group: 'p1m1', edges: topEdge })).toEqual(['abccbabccba', 'd....d....d']);
  });

  it('is cut where the edge is shorter than its period', () => {
    expect(drawn(4, 2, { group: 'p1m1', edges: topEdge })).toEqual(['bccb', '....']);
  });
});

describe('the edges', () => {
  it('turn the motif so that its outside is the outside of the chart', () => {
    const only = (edge: keyof Border['edges']) => drawn(3, 3, { edges: { ...noEdge, [edge]: true } });
    expect(only('top')).toEqual(['abc', 'd..', '...']);
    expect(only('right')).toEqual(['.da', '..b', '..c']);
    expect(only('bottom')).toEqual(['...', '..d', 'cba']);
    expect(only('left')).toEqual(['c..', 'b..', 'ad.']);
  });

  it('that are not chosen stay free', () => {
    expect(drawn(6, 4, { edges: noEdge })).toEqual(['......', '......', '......', '......']);
  });
});

describe('the corners', () => {
  it('are mitred, and symmetric with mirrors across', () => {
    expect(drawn(8, 6, { group: 'p1m1', motif: blockOf(['ab', 'cd']) })).toEqual([
      'abbaabba',
      'addccdda',
      'bd....db',
      'bd....db',
      'addccdda',
      'abbaabba',
    ]);
  });

  it('of a frieze without mirrors belong to the edge that begins there', () => {
    expect(drawn(6, 6, { motif: blockOf(['abc', 'def']) })).toEqual([
      'abcaba',
      'befdeb',
      'ad..fc',
      'cf..da',
      'bedfeb',
      'abacba',
    ]);
  });

  it('may be left open for a motif of their own', () => {
    expect(drawn(9, 6, { corners: 'open' })).toEqual([
      '..cabca..',
      '...d..d..',
      'ad......c',
      'c......da',
      '..d..d...',
      '..acbac..',
    ]);
  });
});

describe('the inset', () => {
  it('leaves cells free between the edge of the chart and the border', () => {
    expect(drawn(8, 4, { edges: topEdge, insetCells: 1 })).toEqual([
      '........',
      '.abcabc.',
      '.d..d...',
      '........',
    ]);
  });

  it('may leave no room for a border', () => {
    const square = { columns: 4, rows: 4 };
    const border: Border = { group: 'p1', motif: hook, edges: everyEdge, insetCells: 2, corners: 'mitred' };
    expect(borderStrips(border, square)).toHaveLength(0);
    expect(borderStrips({ ...border, insetCells: 1 }, square).length).toBeGreaterThan(0);
  });
});

describe('the table of frieze groups', () => {
  it('has each of the seven once, with a label and a hint of its own', () => {
    for (const key of ['group', 'signature', 'label', 'hint'] as const) {
      expect(new Set(friezeGroups.map((each) => each[key])).size).toBe(7);
    }
  });
});
