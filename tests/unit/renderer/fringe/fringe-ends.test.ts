import { describe, expect, it } from 'vitest';
import { lengthAt, longestFringeMm, withLengthAt } from '../../../../renderer/draw/fringe/fringe-ends.ts';
import type { Fringe } from '../../../../shared/design/schema.ts';

const fringe = (shape: Fringe['shape']): Fringe => ({ shape, longMm: 200, shortMm: 80 });

describe('the ends of a fringe', () => {
  it('hang long in the middle of a V and a curve, and short there in an inverted V', () => {
    expect([lengthAt(fringe('v'), 'middle'), lengthAt(fringe('v'), 'edge')]).toEqual([200, 80]);
    expect([lengthAt(fringe('curve'), 'middle'), lengthAt(fringe('curve'), 'edge')]).toEqual([200, 80]);
    expect([lengthAt(fringe('inverted-v'), 'middle'), lengthAt(fringe('inverted-v'), 'edge')]).toEqual([
      80, 200,
    ]);
  });

  it('are one where it is straight, and none where it is drawn by hand', () => {
    expect([lengthAt(fringe('straight'), 'middle'), lengthAt(fringe('straight'), 'edge')]).toEqual([
      200,
      null,
    ]);
    expect(lengthAt(fringe('by-hand'), 'middle')).toBeNull();
  });
});

describe('an end that is dragged', () => {
  it('changes its own length, to the whole mm', () => {
    expect(withLengthAt(fringe('v'), 'middle', 250.4)).toEqual({ shape: 'v', longMm: 250, shortMm: 80 });
    expect(withLengthAt(fringe('inverted-v'), 'middle', 40)).toEqual({
      ...fringe('inverted-v'),
      shortMm: 40,
    });
  });

  it('does not pass the other one', () => {
    expect(withLengthAt(fringe('v'), 'middle', 10).longMm).toBe(80);
    expect(withLengthAt(fringe('v'), 'edge', 500).shortMm).toBe(200);
  });

  it('carries all of a straight fringe', () => {
    expect(withLengthAt(fringe('straight'), 'middle', 120)).toEqual({
      shape: 'straight',
      longMm: 120,
      shortMm: 120,
    });
  });

  it('stays between nothing and the longest that can be set', () => {
    expect(withLengthAt(fringe('straight'), 'middle', -5).longMm).toBe(0);
    expect(withLengthAt(fringe('straight'), 'middle', longestFringeMm + 1).longMm).toBe(longestFringeMm);
  });
});
