import { describe, expect, it } from 'vitest';
import { heatSteps } from '../../../../renderer/plan/key/heat-steps.ts';

describe('the scale of strands that hang', () => {
  it('goes from none to the most in whole strands, in few steps', () => {
    expect(heatSteps(1)).toEqual([0, 1]);
    expect(heatSteps(4)).toEqual([0, 1, 2, 3, 4]);
    expect(heatSteps(10)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(heatSteps(93)).toEqual([0, 19, 37, 56, 74, 93]);
  });

  it('names no count twice', () => {
    for (let most = 1; most < 200; most++) {
      const steps = heatSteps(most);
      expect(new Set(steps).size).toBe(steps.length);
      expect([steps[0], steps.at(-1)]).toEqual([0, most]);
    }
  });
});
