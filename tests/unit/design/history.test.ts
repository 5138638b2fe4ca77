import { describe, expect, it } from 'vitest';
import { apply, type Edit, inverse, sizeOf, sizeOfStep } from '../../../shared/design/edits.ts';
import { type History, noHistory, record, redo, undo } from '../../../shared/design/history.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Reference } from '../../../shared/design/schema.ts';
import { designFromLetters } from '../../notation.ts';
import { timesAsLong } from '../../times.ts';

const start = designFromLetters(['aaaa']);
const titled = (value: string): Edit => ({ kind: 'set', field: 'title', value });

/** Gives the design each of the titles in turn. */
function afterTitles(titles: string[], maxBytes?: number) {
  let design = start;
  let history = noHistory;
  for (const title of titles) {
    history = record(history, design, `Title ${title}`, titled(title), maxBytes);
    design = apply(design, titled(title));
  }
  return { design, history };
}

describe('undo and redo', () => {
  it('go back and forth over each step, and stop at both ends', () => {
    const two = afterTitles(['A', 'B']);
    const one = undo(two.history, two.design)!;
    expect(one.design.title).toBe('A');
    expect(one.step.label).toBe('Title B');
    const none = undo(one.history, one.design)!;
    expect(none.design.title).toBe('Letters');
    expect(undo(none.history, none.design)).toBeNull();
    const again = redo(none.history, none.design)!;
    expect(again.design.title).toBe('A');
    expect(redo(two.history, two.design)).toBeNull();
  });

  it('give up what was undone once something else is done', () => {
    const { design, history } = afterTitles(['A', 'B']);
    const back = undo(history, design)!;
    const other = record(back.history, back.design, 'Title C', titled('C'));
    expect(other.done.map(({ label }) => label)).toEqual(['Title A', 'Title C']);
    expect(redo(other, apply(back.design, titled('C')))).toBeNull();
  });

  it('leave the history that they start from as it was', () => {
    const { design, history } = afterTitles(['A', 'B']);
    const before = { done: [...history.done], undone: [...history.undone], bytes: history.bytes };
    undo(history, design);
    record(history, design, 'Title C', titled('C'));
    expect(history).toEqual(before);
  });

  it('keep the account of their memory right', () => {
    const { design, history } = afterTitles(['A', 'B', 'C']);
    const sum = ({ done, undone }: History) =>
      [...done, ...undone].reduce((bytes, step) => bytes + step.bytes, 0);
    expect(history.bytes).toBe(sum(history));
    const back = undo(history, design)!;
    expect(back.history.bytes).toBe(sum(back.history));
    const other = record(back.history, back.design, 'Title D', titled('D'));
    expect(other.bytes).toBe(sum(other));
  });
});

describe('the memory of undo', () => {
  const stepBytes = afterTitles(['A']).history.bytes;

  it('holds steps up to its cap, and lets the oldest go above it', () => {
    const titles = ['A', 'B', 'C', 'D'];
    expect(afterTitles(titles, 4 * stepBytes).history.done).toHaveLength(4);
    const less = afterTitles(titles, 4 * stepBytes - 1).history;
    expect(less.done.map(({ label }) => label)).toEqual(['Title B', 'Title C', 'Title D']);
    expect(less.bytes).toBe(3 * stepBytes);
  });

  it('keeps the newest step, however large it is', () => {
    expect(afterTitles(['A', 'B'], 1).history.done.map(({ label }) => label)).toEqual(['Title B']);
  });

  it(`is ${limits.historyBytes} bytes where nobody says otherwise`, () => {
    const runs = new Uint16Array(limits.historyBytes / 8);
    const large: Edit = { kind: 'paint', layer: 'picture', runs };
    expect(sizeOf(large)).toBeGreaterThan(limits.historyBytes / 4);
    let history = noHistory;
    for (let times = 0; times < 6; times++) history = record(history, start, 'Draw', large);
    expect(history.bytes).toBeLessThanOrEqual(limits.historyBytes);
    expect(history.done.length).toBeLessThan(6);
  });

  it('takes a stroke after 100,000 others in less time than to measure these anew', () => {
    const stroke: Edit = { kind: 'paint', layer: 'picture', runs: Uint16Array.of(0, 0, 1, 2) };
    const step = record(noHistory, start, 'Draw', stroke).done[0]!;
    const many: History = { done: Array(100_000).fill(step), undone: [], bytes: 100_000 * step.bytes };
    const times = timesAsLong(
      () => record(many, start, 'Draw', stroke, Number.POSITIVE_INFINITY),
      () => many.done.reduce((bytes, each) => bytes + sizeOfStep(each.edit, each.inverse), 0),
      50,
    );
    expect(times).toBeLessThan(1);
  });
});

describe('a picture under the chart', () => {
  const design = designFromLetters(['ab']);
  const picture = ['A'.repeat(50_000)];
  const laid: Reference = {
    name: 'Shore',
    mediaType: 'image/png',
    picture,
    opacity: 0.5,
    leftMm: 0,
    topMm: 0,
    widthMm: 100,
    heightMm: 100,
    visible: true,
  };
  const put = (value: Reference | null): Edit => ({ kind: 'set', field: 'reference', value });

  it('counts for the step that lays it down, not for those that only move or fade it', () => {
    const before = apply(design, put(laid));
    const moved = put({ ...laid, leftMm: 7 });
    expect(sizeOfStep(put(laid), inverse(design, put(laid)))).toBeGreaterThan(50_000);
    expect(sizeOfStep(moved, inverse(before, moved))).toBeLessThan(1000);
    expect(sizeOfStep(put(null), inverse(before, put(null)))).toBeGreaterThan(50_000);
  });
});

describe('the photograph of a cover', () => {
  it('counts for the step that takes it, not for those that write a text or publish beside it', () => {
    const design = designFromLetters(['ab']);
    const cover = {
      mediaType: 'image/jpeg',
      widthPx: 9,
      heightPx: 9,
      picture: ['A'.repeat(50_000)],
    } as const;
    const taken: Edit = {
      kind: 'set',
      field: 'pattern',
      value: { cover: { ...cover, picture: [...cover.picture] } },
    };
    const before = apply(design, taken);
    const written: Edit = {
      kind: 'set',
      field: 'pattern',
      value: { ...before.pattern, texts: { welcome: 'Hello.' } },
    };
    expect(sizeOfStep(taken, inverse(design, taken))).toBeGreaterThan(50_000);
    expect(sizeOfStep(written, inverse(before, written))).toBeLessThan(1000);
  });
});
