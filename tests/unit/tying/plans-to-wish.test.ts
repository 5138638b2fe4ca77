import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type PlansToWish, plansToWish } from '../../../shared/tying/plans-to-wish.ts';
import { designFromLetters } from '../../notation.ts';

/** Three stripes, each tied by one strand that turns at its edge: three hang at once. */
const stripes = designFromLetters(['abc', 'abc', 'abc', 'abc']);

function plansOf(design: Design, liveWish?: number): { plans: PlansToWish; shares: number[] } {
  const steps = plansToWish(design, flatten(design), liveWish === undefined ? {} : { liveWish });
  const shares: number[] = [];
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) shares.push(step.value);
    else if (step.value.ok) return { plans: step.value.value, shares };
    else throw new Error(step.value.problem.sentence);
  }
}

describe('plans for a wish for few live strands', () => {
  it('are the full plan alone where nothing is wished, or the wish is kept anyway', () => {
    const full = planStrands(stripes, flatten(stripes));
    for (const wish of [undefined, 3, 10])
      expect(plansOf(stripes, wish).plans).toEqual({
        plan: full.ok && full.value,
        held: null,
        warning: null,
      });
  });

  it('are two where the wish takes more pieces, with what it takes', () => {
    const { plans, shares } = plansOf(stripes, 2);
    expect(plans.plan.totals.liveMax).toBe(3);
    expect(plans.held?.totals.liveMax).toBe(2);
    expect(plans.warning).toMatch(/^As planned, 3 strands hang at once; you wished for at most 2\./);
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBeLessThan(1);
  });

  it('obey the pins as far as the wish allows', () => {
    const pins = [1, 2, 3].map((cord) => ({ kind: 'carry' as const, row: 1, cord, toRow: 2, toCord: cord }));
    const { plans } = plansOf({ ...stripes, pins }, 2);
    expect(plans.plan.pins).toEqual(pins);
    expect(plans.held?.pins).toEqual(pins.slice(0, 2));
  });

  it('can not be made where a piece is too short for one knot', () => {
    const short = { ...stripes, tying: { ...stripes.tying, workingLengthMm: 10 } };
    expect(() => plansOf(short, 2)).toThrow(/Make the working length/);
  });
});
