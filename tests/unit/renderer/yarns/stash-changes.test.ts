import { describe, expect, it } from 'vitest';
import { skeinsInWords } from '../../../../renderer/draw/yarns/stash/skeins-in-words.ts';
import {
  withoutYarn,
  withYarnAdded,
  withYarnChanged,
  withYarnPutIn,
} from '../../../../renderer/draw/yarns/stash/stash-changes.ts';
import type { StashYarn } from '../../../../shared/yarn/stash.ts';

const moss: StashYarn = {
  name: 'Moss',
  color: '#667744',
  diameterMm: 2,
  metresPer100G: 200,
  skeinG: 50,
  price: 4,
  ownedSkeins: 3,
  notes: 'Lot 7',
};
const look = { name: 'Bark', color: '#554433', diameterMm: 2, metresPer100G: 200, skeinG: 50 };

describe('the stash', () => {
  it('takes a design’s yarn in once', () => {
    const yarns = withYarnPutIn([moss], look);
    expect(yarns).toEqual([moss, { ...look, ownedSkeins: 0 }]);
    expect(withYarnPutIn(yarns!, { ...look, skeinG: 100 })).toBeNull();
    // Another colour is another yarn, whatever it is called.
    expect(withYarnPutIn(yarns!, { ...look, color: '#554434' })).toHaveLength(3);
  });

  it('changes the label of one yarn, and drops a price and notes that are empty now', () => {
    const [changed, other] = withYarnChanged([moss, moss], 0, { ...look, ownedSkeins: 1 }, '  ');
    expect(changed).toEqual({ ...look, ownedSkeins: 1 });
    expect(other).toBe(moss);
  });

  it('keeps what the file says of a yarn and this version does not know', () => {
    const marked = { ...moss, shelf: 'upper' } as StashYarn;
    expect(withYarnChanged([marked], 0, look, 'Lot 8')[0]).toEqual({
      ...look,
      ownedSkeins: 0,
      notes: 'Lot 8',
      shelf: 'upper',
    });
  });

  it('adds and removes yarns, of which two may be alike', () => {
    const yarns = withYarnAdded([moss, moss], { ...look, ownedSkeins: 2 }, '');
    expect(yarns.at(-1)).toEqual({ ...look, ownedSkeins: 2 });
    expect(withoutYarn(yarns, 1)).toEqual([moss, yarns[2]]);
  });

  it.each([
    [0, 'none left'],
    [0.1, 'a rest'],
    [0.5, '0.5 skeins'],
    [1, '1 skein'],
    [1.2, '1 skein'],
    [2.75, '2.75 skeins'],
    [12, '12 skeins'],
  ])('says what surely is there: %s is %s', (owned, words) => {
    expect(skeinsInWords(owned)).toBe(words);
  });
});
