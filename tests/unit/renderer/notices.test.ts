import { describe, expect, it } from 'vitest';
import { afterSuccess, type Notice, withNotice } from '../../../renderer/shell/notice-list.ts';
import { withShortNames } from '../../../renderer/shell/short-names.ts';

let key = 0;
const problem = (text: string, toldMs = 0): Notice => ({ key: key++, text, bad: true, toldMs });
const news = (text: string, toldMs = 0): Notice => ({ key: key++, text, bad: false, toldMs });
const textsAfter = (...told: Notice[]) =>
  told.reduce<readonly Notice[]>(withNotice, []).map(({ text }) => text);

describe('notices', () => {
  it('are two at most, the latest', () => {
    expect(textsAfter(problem('locked'), problem('hidden'), problem('full'))).toEqual(['hidden', 'full']);
  });

  it('say a sentence once, however often it is told', () => {
    expect(textsAfter(problem('locked'), problem('hidden'), problem('locked'))).toEqual(['hidden', 'locked']);
  });

  it('give up older news for newer, and keep a problem beside it', () => {
    expect(textsAfter(news('Undone.'), problem('locked'), news('Redone.'))).toEqual(['locked', 'Redone.']);
  });

  it('lose their problems when something works, but not one of the same deed', () => {
    const list = [problem('locked', 1000), problem('kept only in part', 3000)];
    expect(afterSuccess(list, 3001).map(({ text }) => text)).toEqual(['kept only in part']);
    expect(afterSuccess([news('Undone.', 1000)], 3001)).toHaveLength(1);
  });
});

describe('a long name in a sentence', () => {
  it('is cut in its middle to 40 characters, and keeps its beginning and end', () => {
    const name = `Lantern over the harbour ${'a'.repeat(60)} second try`;
    const short = withShortNames(`“${name}” is locked. Unlock it.`);
    expect(short).toMatch(/^“Lantern over the har…a+ second try” is locked\. Unlock it\.$/);
    expect([...short.slice(1, short.indexOf('”'))]).toHaveLength(40);
  });

  it.each([
    ['a'.repeat(40), true],
    ['a'.repeat(41), false],
  ])('stays whole up to 40 characters (%s)', (name, isWhole) => {
    expect(withShortNames(`“${name}” is hidden.`) === `“${name}” is hidden.`).toBe(isWhole);
  });

  it('is never cut within a character', () => {
    expect(withShortNames(`“${'🧶'.repeat(50)}”`)).toBe(`“${'🧶'.repeat(20)}…${'🧶'.repeat(19)}”`);
  });

  it('is cut by itself where a sentence has two', () => {
    const [one, two] = ['b'.repeat(50), 'Sky'];
    expect(withShortNames(`“${one}” is part of “${two}” now.`)).toMatch(/^“b+…b+” is part of “Sky” now\.$/);
  });
});
