import { describe, expect, it } from 'vitest';
import { blockOfMotif } from '../../../../shared/chart/patch/block-of-motif.ts';
import { blockOf, type Motif, motifOf, motifSchema } from '../../../../shared/chart/patch/motif.ts';
import { BARE, yarnIdOf } from '../../../../shared/design/codes.ts';
import { limits } from '../../../../shared/design/limits.ts';
import type { Yarn } from '../../../../shared/design/schema.ts';
import type { Result } from '../../../../shared/result.ts';
import { alphabet } from '../../../../shared/yarn/symbols.ts';
import { designFromLetters } from '../../../notation.ts';
import { blockFromLetters, lettersOfBlock } from '../strips-letters.ts';

const design = designFromLetters(['abc']);
const leaf = blockFromLetters(['.b.', 'bc-']);

function taken<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

function coloured(colors: readonly string[]): Yarn[] {
  return colors.map((color, i) => ({
    ...design.yarns[0]!,
    id: yarnIdOf(i + 1),
    name: `Yarn ${i + 1}`,
    symbol: alphabet[i]!.text,
    color,
  }));
}

const motif: Motif = taken(motifOf('m1', ' Sallow leaf ', leaf, design.yarns));

describe('a motif', () => {
  it('is kept as text, with the yarns that it uses', () => {
    expect(motif).toEqual({
      id: 'm1',
      name: 'Sallow leaf',
      columns: 3,
      yarns: design.yarns.slice(1, 3),
      rows: ['1. 1y2 1.', '1y2 1y3 1-'],
    });
    expect(motifSchema.parse(JSON.parse(JSON.stringify(motif)))).toEqual(motif);
    expect(lettersOfBlock(blockOf(motif))).toEqual(['.b.', 'bc-']);
  });

  it('keeps what a skein costs, and not how many are at home', () => {
    const yarns = design.yarns.map((yarn) => ({ ...yarn, price: 4, ownedSkeins: 2 }));
    const kept = taken(motifOf('m1', 'Leaf', leaf, yarns));
    expect(kept.yarns).toEqual(design.yarns.slice(1, 3).map((yarn) => ({ ...yarn, price: 4 })));
  });

  it('needs a knot or a bare cell, and a name', () => {
    expect(motifOf('m1', 'Nothing', blockFromLetters(['..']), design.yarns)).toMatchObject({
      problem: { code: 'empty-motif' },
    });
    expect(motifOf('m1', 'Bare', blockFromLetters(['-.']), design.yarns).ok).toBe(true);
    expect(motifOf('m1', '  ', leaf, design.yarns)).toMatchObject({ problem: { code: 'bad-name' } });
    const longest = 'x'.repeat(limits.nameChars);
    expect(motifOf('m1', longest, leaf, design.yarns).ok).toBe(true);
    expect(motifOf('m1', `${longest}x`, leaf, design.yarns).ok).toBe(false);
  });

  it.each([
    ['a row that is too short', { rows: ['1. 1y2', '3.'] }],
    ['a row of a yarn that is not its own', { rows: ['3y1', '3.'] }],
    ['no row', { rows: [] }],
    ['two yarns of one id', { yarns: [design.yarns[1], design.yarns[1], design.yarns[2]] }],
    ['a colour that is none', { yarns: [{ ...design.yarns[1], color: 'green' }, design.yarns[2]] }],
    ['a key that is none of ours', { author: 'nobody' }],
  ])('is not read from a file with %s', (_, change) => {
    expect(motifSchema.safeParse({ ...motif, ...change }).success).toBe(false);
  });
});

describe('a motif in another design', () => {
  it('takes the yarns of the same name and colour under their own ids', () => {
    const [a, b, c] = design.yarns as [Yarn, Yarn, Yarn];
    const yarns = [
      a,
      { ...c, id: 'y2' as const, symbol: b.symbol },
      { ...b, id: 'y7' as const, symbol: c.symbol },
    ];
    const fitted = taken(blockOfMotif(motif, { ...design, yarns }));
    expect(fitted.newYarns).toEqual([]);
    expect([...fitted.block.cells]).toEqual([0, 7, 0, 7, 2, BARE]);
  });

  it('takes the nearest yarn that looks the same, whatever its name', () => {
    const own = coloured(['#000000', '#808182', '#808080', '#ffffff']);
    const gray = taken(motifOf('m2', 'Gray', blockFromLetters(['a']), coloured(['#808080'])));
    const named = gray.yarns.map((yarn) => ({ ...yarn, name: 'Slate' }));
    const fitted = taken(blockOfMotif({ ...gray, yarns: named }, { ...design, yarns: own }));
    expect([...fitted.block.cells]).toEqual([3]);
    expect(fitted.newYarns).toEqual([]);
  });

  it('brings along what the design lacks, with free ids and symbols', () => {
    const own = coloured(['#000000', '#ffffff']);
    const two = taken(motifOf('m3', 'Two', blockFromLetters(['ba']), coloured(['#cc2222', '#ffffff'])));
    const fitted = taken(blockOfMotif(two, { ...design, yarns: own }));
    expect([...fitted.block.cells]).toEqual([2, 3]);
    expect(fitted.newYarns).toEqual([{ ...two.yarns[0]!, id: 'y3', symbol: alphabet[2]!.text }]);
  });

  it('never makes one yarn of two', () => {
    const own = coloured(['#808080']);
    const near = coloured(['#808081', '#808080']).map((yarn) => ({ ...yarn, name: `Other ${yarn.id}` }));
    const two = taken(motifOf('m4', 'Two', blockFromLetters(['ab']), near));
    const fitted = taken(blockOfMotif(two, { ...design, yarns: own }));
    expect(new Set(fitted.block.cells).size).toBe(2);
    expect(fitted.newYarns).toHaveLength(1);
  });

  it(`brings the design to ${limits.yarns} yarns, and not to one more`, () => {
    const hex = (i: number) => `#${(i * 4).toString(16).padStart(2, '0')}0000`;
    const red = taken(motifOf('m5', 'Blue', blockFromLetters(['a']), coloured(['#0000ff'])));
    const fewer = coloured(Array.from({ length: limits.yarns - 1 }, (_, i) => hex(i)));
    const fitted = taken(blockOfMotif(red, { ...design, yarns: fewer }));
    expect(fitted.newYarns.map(({ id, symbol }) => [id, symbol])).toEqual([
      [`y${limits.yarns}`, alphabet[limits.yarns - 1]!.text],
    ]);
    const full = [...fewer, ...fitted.newYarns.map((yarn) => ({ ...yarn, color: '#00ff00' }))];
    expect(blockOfMotif(red, { ...design, yarns: full })).toMatchObject({
      problem: { code: 'too-many-yarns' },
    });
  });
});
