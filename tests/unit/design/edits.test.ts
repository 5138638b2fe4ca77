import { describe, expect, it } from 'vitest';
import { apply, type Edit, inverse, paintBetween, rowsTouched } from '../../../shared/design/edits.ts';
import { designFromLetters, lettersOf } from '../../notation.ts';

const paint = (...runs: number[]): Edit => ({
  kind: 'paint',
  layer: 'picture',
  runs: Uint16Array.from(runs),
});

describe('a stroke', () => {
  const design = designFromLetters(['aaaa', 'aaaa', 'aaaa']);

  it('paints runs of cells', () => {
    expect(lettersOf(apply(design, paint(0, 1, 2, 2, 2, 0, 1, 255)))).toEqual(['abba', 'aaaa', '-aaa']);
  });

  it('may come back to a row, and paints over itself in order', () => {
    const edit = paint(1, 0, 3, 2, 1, 2, 2, 3);
    expect(lettersOf(apply(design, edit))).toEqual(['aaaa', 'bbcc', 'aaaa']);
    expect(lettersOf(apply(apply(design, edit), inverse(design, edit)))).toEqual(lettersOf(design));
  });

  it('that reaches beyond the chart paints what lies on it', () => {
    const edit = paint(2, 3, 9, 2, 3, 0, 4, 2);
    expect(lettersOf(apply(design, edit))).toEqual(['aaaa', 'aaaa', 'aaab']);
    expect(lettersOf(apply(apply(design, edit), inverse(design, edit)))).toEqual(lettersOf(design));
  });

  it('on a layer that is not there is a fault of ours', () => {
    const edit: Edit = { kind: 'paint', layer: 'nowhere', runs: Uint16Array.of(0, 0, 1, 1) };
    expect(() => apply(design, edit)).toThrow('no layer nowhere');
    expect(() => inverse(design, edit)).toThrow('no layer nowhere');
  });

  it('touches each of its rows once, in order', () => {
    expect(rowsTouched(paint(1, 0, 1, 1, 2, 0, 1, 1))).toEqual([1, 2]);
    expect(rowsTouched(paint())).toBeNull();
    expect(rowsTouched({ kind: 'together', edits: [paint(2, 0, 1, 1), paint(0, 0, 1, 1)] })).toEqual([0, 2]);
    expect(
      rowsTouched({
        kind: 'together',
        edits: [paint(0, 0, 1, 1), { kind: 'set', field: 'title', value: 'x' }],
      }),
    ).toBe('all');
  });
});

describe('the stroke between two states', () => {
  const between = (before: string[], after: string[]) =>
    paintBetween(designFromLetters(before).layers[0]!, designFromLetters(after).layers[0]!);

  it('leaves out cells that are alike, in the middle of a run too', () => {
    expect(between(['aaaa'], ['bbab'])?.runs).toEqual(Uint16Array.of(0, 0, 2, 2, 0, 3, 1, 2));
    expect(between(['abaa'], ['bbba'])?.runs).toEqual(Uint16Array.of(0, 0, 1, 2, 0, 2, 1, 2));
  });

  it('is none where nothing changed', () => {
    expect(between(['ab', '.-'], ['ab', '.-'])).toBeNull();
  });
});

describe('several edits as one', () => {
  it('are applied in order and taken back in the reverse order', () => {
    const design = designFromLetters(['aa']);
    const edit: Edit = {
      kind: 'together',
      edits: [paint(0, 0, 2, 2), { kind: 'set', field: 'title', value: 'Both' }, paint(0, 1, 1, 3)],
    };
    const after = apply(design, edit);
    expect([after.title, ...lettersOf(after)]).toEqual(['Both', 'bc']);
    const back = apply(after, inverse(design, edit));
    expect([back.title, ...lettersOf(back)]).toEqual(['Letters', 'aa']);
  });
});
