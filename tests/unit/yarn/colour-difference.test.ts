import { describe, expect, it } from 'vitest';
import { deltaE2000, LOOK_ALIKE_DELTA_E, lookAlike } from '../../../shared/yarn/colour-difference.ts';

describe('two yarns', () => {
  it('look alike where a maker may take one for the other', () => {
    expect(lookAlike('#5b7f4f', '#5b7f4f')).toBe(true);
    expect(lookAlike('#5b7f4f', '#5e8252')).toBe(true);
    expect(lookAlike('#5b7f4f', '#8b5a2b')).toBe(false);
  });

  it('look alike either way round', () => {
    expect(lookAlike('#404858', '#4a4f5c')).toBe(lookAlike('#4a4f5c', '#404858'));
  });

  it('stop looking alike at the stated difference', () => {
    const greys = Array.from({ length: 60 }, (_, i) => `#${(100 + i).toString(16).repeat(3)}`);
    const far = greys.filter((grey) => deltaE2000(greys[0]!, grey) >= LOOK_ALIKE_DELTA_E);
    expect(far.length).toBeGreaterThan(0);
    expect(greys.filter((grey) => !lookAlike(greys[0]!, grey))).toEqual(far);
  });
});
