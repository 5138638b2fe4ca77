import { describe, expect, it } from 'vitest';
import { boxInSight } from '../../../../renderer/surface/box-in-sight.ts';

/** Of one knot of 5 mm with a fringe of 20 cm on its dowel, and of a picture of 20 cm with the same fringe. */
const bounds = { left: -50, right: 55, top: -40, bottom: 205 };
const oneKnot = { bounds, widthMm: 5, heightMm: 5 };
const picture = { bounds: { ...bounds, bottom: 400 }, widthMm: 150, heightMm: 200 };

describe('a hanging that is shown whole', () => {
  it('has all of its fringe in sight', () => {
    expect(boxInSight(picture)).toEqual(picture.bounds);
  });

  it('leaves the end of a fringe out that would make the knots too small to work on', () => {
    expect(boxInSight(oneKnot)).toEqual({ ...bounds, bottom: 15 });
  });
});
