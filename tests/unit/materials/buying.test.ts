import { describe, expect, it } from 'vitest';
import { defaults } from '../../../shared/design/defaults.ts';
import { buyingOf } from '../../../shared/materials/buying.ts';
import { withStash } from '../../../shared/materials/with-stash.ts';
import { emptyStash, stashYarnOf } from '../../../shared/yarn/stash.ts';

/** 2.4 skeins of 100 m. */
const buy = (ownedSkeins?: number) =>
  buyingOf(240_000, 100_000, ownedSkeins === undefined ? {} : { ownedSkeins });

describe('what to buy', () => {
  it('is all of it where nothing is told of what is at home', () => {
    expect(buy()).toEqual({ ownedSkeins: null, toBuySkeins: 3, oneLotSkeins: 3 });
    expect(buy(0)).toEqual({ ownedSkeins: 0, toBuySkeins: 3, oneLotSkeins: 3 });
  });

  it('is what is missing, in whole skeins; or all anew where it is to be of one dye lot', () => {
    expect(buy(1)).toEqual({ ownedSkeins: 1, toBuySkeins: 2, oneLotSkeins: 3 });
    expect(buy(1.5)).toEqual({ ownedSkeins: 1.5, toBuySkeins: 1, oneLotSkeins: 3 });
  });

  it('is nothing where there is enough, to the last metre', () => {
    expect(buy(2.4)).toEqual({ ownedSkeins: 2.4, toBuySkeins: 0, oneLotSkeins: 0 });
    expect(buy(100)).toMatchObject({ toBuySkeins: 0, oneLotSkeins: 0 });
    expect(buy(2.39)).toMatchObject({ toBuySkeins: 1, oneLotSkeins: 3 });
  });
});

describe('the stash', () => {
  const linen = defaults.yarns[0]!;
  const kept = stashYarnOf({ ...linen, ownedSkeins: 2 });
  const stash = { ...emptyStash, yarns: [kept, { ...kept, ownedSkeins: 0.5 }, { ...kept, skeinG: 100 }] };
  const ownedOf = (yarn: typeof linen) => withStash({ yarns: [yarn] }, stash).yarns[0]!.ownedSkeins;

  it('tells what is owned of a yarn of the same name, colour and skein', () => {
    expect(ownedOf(linen)).toBe(2.5);
  });

  it('tells nothing of other yarns, nor where the design tells itself', () => {
    expect(ownedOf({ ...linen, color: '#000000' })).toBeUndefined();
    expect(ownedOf({ ...linen, name: 'Flax' })).toBeUndefined();
    expect(ownedOf({ ...linen, ownedSkeins: 0 })).toBe(0);
  });
});
