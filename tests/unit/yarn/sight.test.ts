import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../shared/yarn/colour-difference.ts';
import { seenAs, sights } from '../../../shared/yarn/sight.ts';

describe('a colour as it is seen', () => {
  it('is itself in normal sight', () => {
    expect(seenAs('normal', '#5b7f4f')).toBe('#5b7f4f');
  });

  it('stays black, white or grey in every sight, where it is one', () => {
    for (const grey of ['#000000', '#ffffff', '#808080', '#2b2b2b']) {
      expect(sights.map((sight) => seenAs(sight, grey))).toEqual(sights.map(() => grey));
    }
  });

  it('is hard to tell from another of its kind: moss from rust without long or middle cones, not without short ones', () => {
    const [moss, rust] = ['#7a7430', '#97672c'];
    const apart = (sight: (typeof sights)[number]) => deltaE2000(seenAs(sight, moss), seenAs(sight, rust));
    expect(apart('normal')).toBeGreaterThan(10);
    expect(apart('deutan')).toBeLessThan(5);
    expect(apart('tritan')).toBeGreaterThan(10);
  });

  it('is a grey in greyscale print, lighter for a lighter colour', () => {
    const greys = ['#102040', '#9e3329', '#e0955a', '#e6ddc9'].map((hex) => seenAs('grey', hex));
    for (const grey of greys) expect(grey).toMatch(/^#([0-9a-f]{2})\1\1$/);
    expect([...greys].sort()).toEqual(greys);
  });
});
