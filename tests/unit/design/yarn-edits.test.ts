import { describe, expect, it } from 'vitest';
import { faultOf } from '../../../shared/design/check-design.ts';
import type { Design } from '../../../shared/design/design.ts';
import { apply, type Edit, inverse } from '../../../shared/design/edits.ts';
import {
  addYarn,
  addYarns,
  changeYarn,
  mergeYarns,
  moveYarn,
  recolour,
  removeYarn,
  replaceYarnEverywhere,
} from '../../../shared/design/yarn-edits.ts';
import type { Result } from '../../../shared/result.ts';
import { designFromLetters, lettersOf } from '../../notation.ts';

const design = designFromLetters([
  ['aabb', 'aacc'],
  ['b.-b', '....'],
]);
const look = { name: 'Fern', color: '#406040', diameterMm: 2, metresPer100G: 200, skeinG: 50 };
const symbols = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];

function edited(edit: Result<Edit>, before: Design = design): Design {
  if (!edit.ok) throw new Error(edit.problem.sentence);
  const next = apply(before, edit.value);
  expect(faultOf(next)).toBeNull();
  return next;
}

function refusal(edit: Result<Edit>): string {
  if (edit.ok) throw new Error('it was not refused');
  return `${edit.problem.code}: ${edit.problem.sentence}`;
}

const ids = (of: Design) => of.yarns.map(({ id }) => id);

describe('a new yarn', () => {
  it('comes last, with the lowest free id and the first symbol that is not in use', () => {
    expect(edited(addYarn(design, symbols, look)).yarns.at(-1)).toEqual({ ...look, id: 'y7', symbol: 'g' });
    const gap = edited(removeYarn(design, 'y5'));
    expect(edited(addYarn(gap, symbols, look), gap).yarns.at(-1)).toEqual({ ...look, id: 'y5', symbol: 'e' });
  });

  it('is refused where the list is full', () => {
    const all = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&'];
    let full = design;
    while (full.yarns.length < 64) full = edited(addYarn(full, all, look), full);
    expect(refusal(addYarn(full, all, look))).toBe(
      'too-many-yarns: A design has at most 64 yarns. Merge two of them to make room for another.',
    );
  });

  it('is refused where no symbol is left', () => {
    expect(refusal(addYarn(design, symbols.slice(0, 6), look))).toBe(
      'no-symbol-left: Every symbol is in use. Merge two yarns to set one free.',
    );
  });

  it('is refused where the file could not hold it', () => {
    expect(refusal(addYarn(design, symbols, { ...look, color: 'green' }))).toBe(
      'bad-yarn: The colour of yarn 7 “Fern” must be written like #5b7f4f, in lower case.',
    );
  });
});

describe('several new yarns', () => {
  const looks = [look, { ...look, name: 'Bracken', color: '#8a6a30' }];

  it('come in one edit, each with an id and a symbol of its own', () => {
    const added = edited(addYarns(design, symbols, looks)).yarns.slice(6);
    expect(added).toEqual([
      { ...looks[0], id: 'y7', symbol: 'g' },
      { ...looks[1], id: 'y8', symbol: 'h' },
    ]);
  });

  it("are refused all together, where one of them has no place, no symbol, or can't be", () => {
    const all = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&'];
    expect(addYarns(design, all, Array(58).fill(look)).ok).toBe(true);
    expect(refusal(addYarns(design, all, Array(59).fill(look)))).toBe(
      'too-many-yarns: A design has at most 64 yarns. This one has 6, so 59 more are too many. ' +
        'Add fewer, or merge some first.',
    );
    expect(refusal(addYarns(design, symbols.slice(0, 7), looks))).toContain('no-symbol-left');
    expect(refusal(addYarns(design, symbols, [look, { ...look, name: '' }]))).toContain('bad-yarn');
  });
});

describe('a yarn moved in the list', () => {
  it('stands where it was put, and its cells stay', () => {
    const moved = apply(design, moveYarn(design, 'y5', 1));
    expect(ids(moved)).toEqual(['y1', 'y5', 'y2', 'y3', 'y4', 'y6']);
    expect(moved.layers).toBe(design.layers);
    expect(ids(apply(design, moveYarn(design, 'y1', 3)))).toEqual(['y2', 'y3', 'y4', 'y1', 'y5', 'y6']);
    expect(apply(moved, inverse(design, moveYarn(design, 'y5', 1)))).toEqual(design);
  });

  it('goes no further than either end', () => {
    expect(ids(apply(design, moveYarn(design, 'y5', -3))).at(0)).toBe('y5');
    expect(ids(apply(design, moveYarn(design, 'y2', 99))).at(-1)).toBe('y2');
  });

  it('is no change where it stands there already', () => {
    expect(moveYarn(design, 'y2', 1)).toEqual({ kind: 'together', edits: [] });
    expect(moveYarn(design, 'y6', 40)).toEqual({ kind: 'together', edits: [] });
  });
});

describe('a design recoloured', () => {
  const sheets = (of: Design) => [lettersOf(of, 0), lettersOf(of, 1)];

  it('lets two yarns change places, on every layer', () => {
    const layers = design.layers.map((layer) => ({ ...layer, visible: false, locked: true }));
    const before = { ...design, layers, ground: 'y4' as const };
    const edit = recolour(
      before,
      new Map([
        ['y2', 'y3'],
        ['y3', 'y2'],
      ]),
    );
    const after = apply(before, edit);
    expect(sheets(after)).toEqual([
      ['aacc', 'aabb'],
      ['c.-c', '....'],
    ]);
    expect(after.yarns).toBe(before.yarns);
    expect(apply(after, inverse(before, edit))).toEqual(before);
    expect(
      apply(
        after,
        recolour(
          after,
          new Map([
            ['y2', 'y3'],
            ['y3', 'y2'],
          ]),
        ),
      ),
    ).toEqual(before);
  });

  it('turns yarns round in a circle, or several into one', () => {
    const circle = new Map([
      ['y1', 'y2'],
      ['y2', 'y3'],
      ['y3', 'y1'],
    ] as const);
    expect(sheets(apply(design, recolour(design, circle)))).toEqual([
      ['bbcc', 'bbaa'],
      ['c.-c', '....'],
    ]);
    const one = new Map([
      ['y1', 'y5'],
      ['y2', 'y5'],
    ] as const);
    expect(sheets(apply(design, recolour(design, one)))).toEqual([
      ['eeee', 'eecc'],
      ['e.-e', '....'],
    ]);
  });

  it('takes the ground along', () => {
    expect(apply(design, recolour(design, new Map([['y1', 'y6']]))).ground).toBe('y6');
    expect(apply(design, recolour(design, new Map([['y2', 'y6']]))).ground).toBe('y1');
  });

  it('is no change where each yarn is given for itself, or has no cell', () => {
    expect(recolour(design, new Map([['y2', 'y2']]))).toEqual({ kind: 'together', edits: [] });
    expect(recolour(design, new Map([['y6', 'y2']]))).toEqual({ kind: 'together', edits: [] });
  });
});

describe('a changed yarn', () => {
  it('keeps its place, its id and what was not changed', () => {
    const changed = edited(changeYarn(design, 'y2', { name: 'Slate', diameterMm: 1.5 }));
    expect(changed.yarns[1]).toEqual({ ...design.yarns[1], name: 'Slate', diameterMm: 1.5 });
    expect(ids(changed)).toEqual(ids(design));
  });

  it('may be given the symbol that it has', () => {
    expect(edited(changeYarn(design, 'y2', { symbol: 'b' })).yarns).toEqual(design.yarns);
  });

  it('is refused the symbol of another', () => {
    expect(refusal(changeYarn(design, 'y2', { symbol: 'c' }))).toBe(
      'symbol-in-use: “Tide” has the symbol c already. Choose another symbol.',
    );
  });

  it('is refused an empty name and a thickness of nothing', () => {
    expect(refusal(changeYarn(design, 'y2', { name: '' }))).toContain('bad-yarn: The name of yarn 2 must be');
    expect(refusal(changeYarn(design, 'y2', { diameterMm: 0 }))).toContain(
      'The thickness of yarn 2 “Dusk” must be',
    );
  });
});

describe('a yarn taken off the list', () => {
  it('is gone where no cell has it', () => {
    expect(ids(edited(removeYarn(design, 'y4')))).toEqual(['y1', 'y2', 'y3', 'y5', 'y6']);
  });

  it('is refused while a cell of any layer has it', () => {
    expect(refusal(removeYarn(design, 'y3'))).toBe(
      'yarn-in-use: Layer “Sheet 1” still has cells of “Tide”. Replace them or merge the yarn into another.',
    );
  });

  it('is refused where it is the ground, or the only one', () => {
    expect(refusal(removeYarn({ ...design, ground: 'y4' }, 'y4'))).toContain(
      'ground-yarn: “Apricot” is the ground.',
    );
    const one = { ...design, yarns: design.yarns.slice(0, 1) };
    expect(refusal(removeYarn(one, 'y1'))).toContain('last-yarn: “Linen” is the only yarn.');
  });
});

describe('a yarn replaced everywhere', () => {
  it('is replaced in all layers, hidden and locked ones too, and stays on the list', () => {
    const layers = design.layers.map((layer) => ({ ...layer, visible: false, locked: true }));
    const replaced = apply({ ...design, layers }, replaceYarnEverywhere(design, 'y2', 'y4'));
    expect([lettersOf(replaced, 0), lettersOf(replaced, 1)]).toEqual([
      ['aadd', 'aacc'],
      ['d.-d', '....'],
    ]);
    expect(ids(replaced)).toEqual(ids(design));
  });

  it('changes nothing where it has no cell, or is replaced by itself', () => {
    expect(replaceYarnEverywhere(design, 'y6', 'y1')).toEqual({ kind: 'together', edits: [] });
    expect(replaceYarnEverywhere(design, 'y2', 'y2')).toEqual({ kind: 'together', edits: [] });
  });
});

describe('two yarns merged', () => {
  it('leave one on the list and in the cells', () => {
    const merged = edited(mergeYarns(design, 'y2', 'y3'));
    expect(ids(merged)).toEqual(['y1', 'y3', 'y4', 'y5', 'y6']);
    expect([lettersOf(merged, 0), lettersOf(merged, 1)]).toEqual([
      ['aacc', 'aacc'],
      ['c.-c', '....'],
    ]);
  });

  it('make the one that stays the ground, where the other was', () => {
    expect(edited(mergeYarns(design, 'y1', 'y2')).ground).toBe('y2');
    expect(edited(mergeYarns(design, 'y2', 'y1')).ground).toBe('y1');
  });

  it('forget what is cut of the one that goes, since a yarn added later may get its id', () => {
    const cut = [
      { yarn: 'y2' as const, cutMm: 1524, pieces: 4 },
      { yarn: 'y3' as const, cutMm: 1524, pieces: 5 },
    ];
    const bundled = { ...design, bundles: { fitted: false, cut } };
    const edit = mergeYarns(bundled, 'y2', 'y3');
    if (!edit.ok) throw new Error(edit.problem.sentence);
    const merged = apply(bundled, edit.value);
    expect(merged.bundles).toEqual({ fitted: false, cut: [cut[1]] });
    expect(apply(merged, inverse(bundled, edit.value))).toEqual(bundled);
  });

  it('must be two', () => {
    expect(refusal(mergeYarns(design, 'y1', 'y1'))).toContain(
      "same-yarn: “Linen” can't be merged into itself.",
    );
  });
});

describe('a yarn that the design does not have', () => {
  it('is a fault of ours', () => {
    expect(() => removeYarn(design, 'y40')).toThrow('no yarn y40');
    expect(() => replaceYarnEverywhere(design, 'y1', 'y40')).toThrow('no yarn y40');
    expect(() => recolour(design, new Map([['y40', 'y1']]))).toThrow('no yarn y40');
    expect(() => moveYarn(design, 'y40', 0)).toThrow('no yarn y40');
  });
});
