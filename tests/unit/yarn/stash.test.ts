import { describe, expect, it } from 'vitest';
import { defaults } from '../../../shared/design/defaults.ts';
import { limits } from '../../../shared/design/limits.ts';
import { yarnSchema } from '../../../shared/design/schema.ts';
import {
  emptyStash,
  lookOfStashYarn,
  matchStash,
  type Stash,
  type StashYarn,
  stashSchema,
  stashYarnOf,
} from '../../../shared/yarn/stash.ts';

const moss: StashYarn = {
  name: 'Moss',
  color: '#5b7f4f',
  diameterMm: 2,
  metresPer100G: 200,
  skeinG: 50,
  price: 4.5,
  ownedSkeins: 2.5,
  notes: 'From the blue tin',
};

function stashOf(...colours: string[]): Stash {
  return { ...emptyStash, yarns: colours.map((color, i) => ({ ...moss, name: `Yarn ${i + 1}`, color })) };
}

const isRead = (stash: object) => stashSchema.safeParse(stash).success;

describe('the stash', () => {
  it('comes back from its file as it was, with keys that nobody knows', () => {
    const stash = { ...emptyStash, yarns: [{ ...moss, shelf: 'left' }], mended: true };
    expect(stashSchema.parse(JSON.parse(JSON.stringify(stash)))).toEqual(stash);
    expect(isRead(emptyStash)).toBe(true);
  });

  it('is not read from another format, nor from a later version', () => {
    expect(isRead({ ...emptyStash, format: 'larkrow-design' })).toBe(false);
    expect(isRead({ ...emptyStash, version: 2 })).toBe(false);
  });

  it('holds yarns as a design does, and how much of each is owned', () => {
    const holds = (change: object) => isRead({ ...emptyStash, yarns: [{ ...moss, ...change }] });
    expect(holds({ price: undefined, notes: undefined })).toBe(true);
    expect(holds({ ownedSkeins: 0 })).toBe(true);
    for (const wrong of [
      { name: '' },
      { color: 'moss' },
      { diameterMm: 0 },
      { skeinG: -50 },
      { price: -1 },
      { ownedSkeins: -1 },
      { ownedSkeins: undefined },
    ]) {
      expect(holds(wrong)).toBe(false);
    }
  });

  it(`has at most ${limits.stashYarns} yarns, with notes of at most ${limits.stashNoteChars} characters`, () => {
    expect(isRead({ ...emptyStash, yarns: Array(limits.stashYarns).fill(moss) })).toBe(true);
    expect(isRead({ ...emptyStash, yarns: Array(limits.stashYarns + 1).fill(moss) })).toBe(false);
    const noted = (count: number) => ({ ...emptyStash, yarns: [{ ...moss, notes: 'x'.repeat(count) }] });
    expect(isRead(noted(limits.stashNoteChars))).toBe(true);
    expect(isRead(noted(limits.stashNoteChars + 1))).toBe(false);
  });
});

describe('a yarn of the stash', () => {
  it('goes into a design without its notes, and with what is owned of it', () => {
    const { notes: _notes, ...look } = moss;
    expect(lookOfStashYarn(moss)).toEqual(look);
    expect(yarnSchema.safeParse({ ...lookOfStashYarn(moss), id: 'y1', symbol: 'a' }).success).toBe(true);
  });

  it('comes from a design without id and symbol, none of it owned where the design does not tell', () => {
    const { id: _id, symbol: _symbol, ...linen } = defaults.yarns[0]!;
    expect(stashYarnOf(defaults.yarns[0]!)).toEqual({ ...linen, ownedSkeins: 0 });
    expect(stashYarnOf(lookOfStashYarn(moss))).toEqual({ ...moss, notes: undefined });
  });
});

describe('a colour looked for in the stash', () => {
  it('is met by the yarns nearest to it, the nearest first', () => {
    const stash = stashOf('#9e3329', '#5e8252', '#5b7f4f', '#28455f');
    const found = matchStash(stash, '#5b7f4f', 2);
    expect(found.map(({ index }) => index)).toEqual([2, 1]);
    expect(found[0]).toEqual({ index: 2, yarn: stash.yarns[2], difference: 0 });
    expect(found[1]!.difference).toBeLessThan(5);
  });

  it('is met by the first of two that are as near, by five at most unless more are asked for, by none of an empty stash', () => {
    const stash = stashOf(...Array(8).fill('#5b7f4f'));
    expect(matchStash(stash, '#28455f').map(({ index }) => index)).toEqual([0, 1, 2, 3, 4]);
    expect(matchStash(stash, '#28455f', 20)).toHaveLength(8);
    expect(matchStash(emptyStash, '#28455f')).toEqual([]);
  });
});
