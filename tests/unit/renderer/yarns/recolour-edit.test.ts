import { describe, expect, it } from 'vitest';
import { type Becomes, recolourEdit } from '../../../../renderer/draw/yarns/recolour-edit.ts';
import { yarnsInUse } from '../../../../renderer/draw/yarns/yarns-in-use.ts';
import type { YarnId } from '../../../../shared/design/codes.ts';
import { apply, inverse } from '../../../../shared/design/edits.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { alphabet } from '../../../../shared/yarn/symbols.ts';
import { designFromLetters, lettersOf } from '../../../notation.ts';

const symbols = alphabet.map(({ text }) => text);
const own = (id: YarnId): Becomes => ({ from: 'design', id });
const rope = { name: 'Harbour rope', color: '#335577', diameterMm: 2, metresPer100G: 180, skeinG: 50 };

function edited(rows: readonly string[], wanted: readonly (readonly [YarnId, Becomes])[]) {
  const design = designFromLetters(rows);
  const edit = recolourEdit(design, symbols, new Map(wanted));
  if (!edit.ok || !edit.value) throw new Error('there is nothing to apply');
  const after = apply(design, edit.value);
  return { design, after, back: apply(after, inverse(design, edit.value)) };
}

describe('recolouring', () => {
  it('lets two yarns change places', () => {
    const { after, back, design } = edited(
      ['abab', 'bccb'],
      [
        ['y1', own('y2')],
        ['y2', own('y1')],
      ],
    );
    expect(lettersOf(after)).toEqual(['baba', 'acca']);
    expect(after.ground).toBe('y2');
    expect(back).toEqual(design);
  });

  it('adds a yarn of the stash once, however many yarns become it', () => {
    const stash: Becomes = { from: 'stash', look: rope };
    const { after, back, design } = edited(
      ['abc'],
      [
        ['y2', stash],
        ['y3', stash],
      ],
    );
    expect(lettersOf(after)).toEqual(['agg']);
    expect(after.yarns.map(({ name }) => name)).toEqual([...design.yarns.map(({ name }) => name), rope.name]);
    expect(back).toEqual(design);
  });

  it('is nothing where every yarn stays as it is', () => {
    const design = designFromLetters(['ab']);
    expect(recolourEdit(design, symbols, new Map([['y1', own('y1')]]))).toEqual({ ok: true, value: null });
    expect(recolourEdit(design, symbols, new Map())).toEqual({ ok: true, value: null });
  });

  it('says why where the design has no room for a yarn of the stash', () => {
    const { yarns, ...rest } = designFromLetters(['ab']);
    const full = alphabet.map(({ text }, i) => ({
      ...yarns[0]!,
      id: `y${i + 1}` as const,
      symbol: text,
    }));
    expect(full).toHaveLength(limits.yarns);
    const edit = recolourEdit(
      { ...rest, yarns: full },
      symbols,
      new Map([['y1', { from: 'stash', look: rope }]]),
    );
    expect(edit).toMatchObject({ ok: false, problem: { code: 'too-many-yarns' } });
  });

  it('offers the yarns that any layer has, hidden ones too, and the ground', () => {
    const design = designFromLetters([['bb'], ['d.']]);
    const hidden = { ...design, layers: design.layers.map((layer) => ({ ...layer, visible: false })) };
    expect(yarnsInUse(hidden).map(({ id }) => id)).toEqual(['y1', 'y2', 'y4']);
  });
});
