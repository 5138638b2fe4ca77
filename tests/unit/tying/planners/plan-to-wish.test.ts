import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { pinFaults } from '../../../../shared/tying/pins/pin-faults.ts';
import type { Plan } from '../../../../shared/tying/plan.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../../../shared/tying/plan-wishes.ts';
import { type PlanToWish, planToWish } from '../../../../shared/tying/planners/plan-to-wish.ts';
import { designFromLetters } from '../../../notation.ts';

/** Three stripes, each tied by one strand that turns at its edge: three hang at once. */
const stripes = designFromLetters(['abc', 'abc', 'abc', 'abc']);

function wishing(liveWish: number, design: Design = stripes): Design {
  return { ...design, tying: { ...design.tying, liveWish } };
}

function made(design: Design): { plans: PlanToWish; shares: number[] } {
  const steps = planToWish(design, flatten(design));
  const shares: number[] = [];
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) shares.push(step.value);
    else if (step.value.ok) return { plans: step.value.value, shares };
    else throw new Error(step.value.problem.sentence);
  }
}

function planOf(design: Design, wishes?: PlanWishes): Plan {
  const plan = planStrands(design, flatten(design), wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

describe('the plan of a maker who wishes for few live strands', () => {
  it('is the best one where nothing is wished, or it keeps the wish anyway', () => {
    const best = planOf(stripes);
    expect(made(stripes).plans).toEqual({ plan: best, free: null });
    for (const liveWish of [3, 10]) {
      const plan = { ...best, settings: { ...best.settings, liveWish } };
      expect(made(wishing(liveWish)).plans).toEqual({ plan, free: null });
    }
  });

  it('tells the wish among its settings, and none where nothing is wished', () => {
    const told = (plan: Plan) => JSON.parse(JSON.stringify(plan.settings));
    expect(told(made(wishing(2)).plans.plan)).toHaveProperty('liveWish', 2);
    expect(told(made(wishing(2)).plans.free!)).not.toHaveProperty('liveWish');
    expect(told(made(stripes).plans.plan)).not.toHaveProperty('liveWish');
  });

  it('is another one where the best has more, with the best beside it', () => {
    const { plans, shares } = made(wishing(2));
    expect(plans.plan.totals.liveMax).toBe(2);
    expect(plans.free).toEqual(planOf(stripes));
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBeLessThan(1);
  });

  it('is the one that everybody gets who asks for the full plan; a quick one leaves the wish aside', () => {
    expect(planOf(wishing(2))).toEqual(made(wishing(2)).plans.plan);
    expect(planOf(wishing(2), { effort: 'quick' })).toEqual(planOf(stripes, { effort: 'quick' }));
  });

  it('keeps to another wish where one is given', () => {
    expect(planOf(wishing(2), { liveWish: 1 }).totals.liveMax).toBe(1);
  });

  it('obeys the pins as far as the wish allows, and tells the others', () => {
    const pins = [1, 2, 3].map((cord) => ({ kind: 'carry' as const, row: 1, cord, toRow: 2, toCord: cord }));
    const pinned = wishing(2, { ...stripes, pins });
    const { plans } = made(pinned);
    expect(plans.plan.pins).toEqual(pins.slice(0, 2));
    expect(plans.free?.pins).toEqual(pins);
    expect(pinFaults(pinned, flatten(pinned)).map(({ pin }) => pin)).toEqual(pins.slice(2));
  });

  it('can not be made where a piece is too short for one knot', () => {
    const short = { ...stripes, tying: { ...stripes.tying, workingLengthMm: 10 } };
    expect(() => made(short)).toThrow(/Make the working length/);
  });
});
