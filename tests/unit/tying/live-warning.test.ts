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

describe('a wish for few live strands', () => {
  it('is silent where no more hang', () => {
    expect(planOf().totals.liveMax).toBe(3);
    expect(liveWarning(planOf(), planOf({ liveWish: 3 }), 3)).toBeNull();
  });

  it('is kept by cutting, and says what that takes', () => {
    const held = planOf({ liveWish: 2 });
    expect(held.totals).toMatchObject({ liveMax: 2, pieces: 6 });
    expect(liveWarning(planOf(), held, 2)).toBe(
      'As planned, 3 strands hang at once; you wished for at most 2. To stay with 2 takes 3 more pieces, so 6 more loose ends.',
    );
  });

  it('may be for none at all', () => {
    expect(planOf({ liveWish: 0 }).totals).toMatchObject({ liveMax: 0, pieces: 12 });
  });

  it('can’t be kept in rows that are tied already, and says so', () => {
    const held = planOf({ liveWish: 1, tied: { plan: planOf(), rows: 3 } });
    expect(held.totals.liveMax).toBe(3);
    expect(liveWarning(planOf(), held, 1)).toBe(
      'As planned, 3 strands hang at once; you wished for at most 1. The rows that are tied already leave 3 hanging.',
    );
  });
});
