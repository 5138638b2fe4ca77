import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { liveWarning } from '../../../shared/tying/live-warning.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../../shared/tying/plan-wishes.ts';
import { designFromLetters } from '../../notation.ts';

/** Three stripes of one cord, so three strands that turn at every row. */
const design = designFromLetters(['abc', 'abc', 'abc', 'abc']);

function planOf(wishes: PlanWishes = {}): Plan {
  const plan = planStrands(design, flatten(design), wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

function warning(wish: number, wishes: PlanWishes = { liveWish: wish }): string | null {
  const free = planOf().totals;
  return liveWarning({ wish, plan: planOf(wishes).totals, free }, 'metric');
}

describe('a wish for few live strands', () => {
  it('is silent where the best plan keeps it', () => {
    expect(planOf().totals.liveMax).toBe(3);
    expect(liveWarning({ wish: 3, plan: planOf({ liveWish: 3 }).totals, free: null }, 'metric')).toBeNull();
  });

  it('is kept by cutting, and says what that takes', () => {
    expect(planOf({ liveWish: 2 }).totals).toMatchObject({ liveMax: 2, pieces: 6 });
    // Three pieces of 1524 mm are 4.572 m.
    expect(warning(2)).toBe(
      'At most 2 strands hang at once, as you wish; else 3 would. It takes 3 more pieces, so 6 more loose ends and 4.6 m more yarn.',
    );
  });

  it('says so where it takes no more pieces', () => {
    const { totals } = planOf();
    expect(liveWarning({ wish: 2, plan: { ...totals, liveMax: 2 }, free: totals }, 'metric')).toBe(
      'At most 2 strands hang at once, as you wish; else 3 would. It takes no more pieces.',
    );
  });

  it('may be for none at all', () => {
    expect(planOf({ liveWish: 0 }).totals).toMatchObject({ liveMax: 0, pieces: 12 });
  });

  it('can’t be kept in rows that are tied already, and says so', () => {
    expect(warning(1, { liveWish: 1, tied: { plan: planOf(), rows: 3 } })).toBe(
      'You wish for at most 1 hanging at once, but the rows that are tied already leave 3.',
    );
  });
});
