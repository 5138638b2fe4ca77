import { describe, expect, it } from 'vitest';
import { placeInHalves } from '../../../renderer/draw/view/place-in-halves.ts';

describe('a place in half cells, in words', () => {
  it('is on a cord or between two of them', () => {
    expect(placeInHalves(1, 'cord')).toBe('on cord 1');
    expect(placeInHalves(8, 'cord')).toBe('between cords 4 and 5');
    expect(placeInHalves(7, 'row')).toBe('on row 4');
  });

  it('may be before the first', () => {
    expect(placeInHalves(0, 'row')).toBe('before row 1');
  });
});
