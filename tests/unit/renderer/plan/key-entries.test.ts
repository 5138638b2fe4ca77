import { describe, expect, it } from 'vitest';
import { keyEntries } from '../../../../renderer/plan/key/key-entries.tsx';

const plain = {
  view: 'strands',
  hasStrand: false,
  isTying: false,
  rowsBy: 'live',
  pins: new Set<'cut'>(),
  hasPinFault: false,
} as const;

const wordsOf = (changed: Partial<Parameters<typeof keyEntries>[0]>) =>
  keyEntries({ ...plain, ...changed }).map(([, words]) => words);

describe('the key to the chart', () => {
  it('tells every view’s signs, before a strand is chosen too', () => {
    for (const view of ['strands', 'loose-ends', 'long-carries', 'worst-rows'] as const)
      expect(wordsOf({ view }).length).toBeGreaterThan(1);
  });

  it('tells the tone of pieces in turn once a strand is chosen', () => {
    const words = 'every other piece is lighter or darker';
    expect(wordsOf({})).not.toContain(words);
    expect(wordsOf({ hasStrand: true })).toContain(words);
    expect(wordsOf({ view: 'loose-ends', hasStrand: true })).toContain(words);
  });

  it('tells what is faint and outlined while the tying order is followed', () => {
    expect(wordsOf({ isTying: true })).toEqual(expect.arrayContaining(['not tied yet', 'the next knot']));
  });

  it('tells what the bars beside the worst rows are', () => {
    expect(wordsOf({ view: 'worst-rows', rowsBy: 'pieces' })).toContain('pieces that begin in the row');
  });

  it('tells the pins that there are, and one that can’t be obeyed', () => {
    expect(wordsOf({ pins: new Set(['cut']), hasPinFault: true }).slice(-2)).toEqual([
      'pinned: cut',
      'can’t be obeyed',
    ]);
  });

  it('tells nothing twice', () => {
    const words = wordsOf({ view: 'loose-ends', hasStrand: true });
    expect(new Set(words).size).toBe(words.length);
  });
});
