import { describe, expect, it } from 'vitest';
import type { Progress } from '../../../shared/bridge.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { planCarefully } from '../../../shared/tying/careful-person/plan-carefully.ts';
import type { Plan } from '../../../shared/tying/plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../../shared/tying/plan-wishes.ts';
import { designFromLetters } from '../../notation.ts';

/** One knot of a new design's yarn: 2 sqrt((pi 5)^2 + 2.4^2) + 5 mm, to the tenth. Derived. */
const knotMm = 36.8;

/** A working length that holds so many knots, so much carried yarn, and two tails. */
const holding = (knots: number, carriedMm = 0) => ({ workingLengthMm: 130 + knots * knotMm + carriedMm });

function designOf(letters: string[], change: Partial<Design['tying']> = {}): Design {
  const plain = designFromLetters(letters);
  return { ...plain, tying: { ...plain.tying, ...change } };
}

function planOf(design: Design, wishes: PlanWishes = {}): Plan {
  const plan = planStrands(design, flatten(design), wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

/** Strands as text: 'y1 r1 1-2, r1 4-5 | r2 5-3': stretches by commas, pieces by bars. */
function told({ strands }: Plan): string[] {
  return strands.map(
    ({ yarn, pieces }) =>
      `${yarn} ${pieces
        .map(({ stretches }) => stretches.map(({ row, from, to }) => `r${row} ${from}-${to}`).join(', '))
        .join(' | ')}`,
  );
}

describe('the planner', () => {
  it('leaves the nearest strand to a run that no other reaches', () => {
    // Row 2 goes left. Its a at cord 4 is nearest to the strand at cord 3, which is the only one that reaches cord 1.
    const design = designOf(['bbabba', 'abbabb'], { carryMaxCords: 2, carryMaxRows: 1 });
    const careful = planCarefully(design, flatten(design));
    const ofA = (strands: string[]) => strands.filter((strand) => strand.startsWith('y1'));
    expect(careful.ok && ofA(told(careful.value))).toEqual(['y1 r1 3-3, r2 4-4', 'y1 r1 6-6', 'y1 r2 1-1']);
    expect(ofA(told(planOf(design)))).toEqual(['y1 r1 3-3, r2 1-1', 'y1 r1 6-6, r2 4-4']);
  });

  it('cuts where the carry would make a further piece needed', () => {
    // Two runs of three knots: a piece of three knots for each, instead of a carry and a join.
    const design = designOf(['aaabaaa'], holding(3, 10.4));
    expect(told(planOf(design))).toEqual(['y1 r1 1-3', 'y2 r1 4-4', 'y1 r1 5-7']);
  });

  it('carries where the piece holds both runs', () => {
    const design = designOf(['aaabaaa'], holding(6, 10.5));
    expect(told(planOf(design))).toEqual(['y1 r1 1-3, r1 5-7', 'y2 r1 4-4']);
  });

  it('ties nothing where everything is bare', () => {
    expect(planOf(designOf(['---'])).totals).toMatchObject({ pieces: 0, costMm: 0 });
  });

  it('needs no carries: with none allowed, each run is a strand', () => {
    const design = designOf(['aba', 'aaa'], { carryMaxCords: 0, carryMaxRows: 0 });
    expect(planOf(design).totals).toMatchObject({ strands: 4, carries: 0, turns: 0 });
  });

  it('makes a fresh piece rather than a carry that costs as much', () => {
    const free = { tailMm: 0, effortMm: 0, workingLengthMm: 1524 };
    expect(planOf(designOf(['aba'], free)).totals).toMatchObject({ strands: 3, carries: 0 });
  });
});

describe('planning', () => {
  const design = designOf(
    Array.from({ length: 24 }, (_, row) => (row % 2 ? 'abcabcabcabc' : 'abcbacbcabca')),
  );

  it('tells how far it is', () => {
    const seen: Progress[] = [];
    expect(planStrands(design, flatten(design), { onProgress: (progress) => seen.push(progress) }).ok).toBe(
      true,
    );
    expect(seen.length).toBeGreaterThan(3);
    expect(seen[0]).toEqual({ done: 0, what: 'Planning the strands' });
    expect(seen.every(({ done }, i) => done >= (seen[i - 1]?.done ?? 0) && done < 1)).toBe(true);
  });

  it('stops soon after it is cancelled', () => {
    const signal = { aborted: false, addEventListener: () => {}, removeEventListener: () => {} };
    let looks = 0;
    const plan = planStrands(design, flatten(design), {
      signal,
      onProgress: () => {
        looks++;
        signal.aborted = looks === 2;
      },
    });
    expect(looks).toBe(2);
    expect(plan).toEqual({
      ok: false,
      problem: { code: 'cancelled', sentence: 'The plan was not made, because it was cancelled.' },
    });
  });
});

describe('rows that are tied', () => {
  const before = designOf(['aab', 'aab', 'bbb']);
  const plan = planOf(before);

  it('stay, and their strands go on from where they hang', () => {
    // Row 2 ends at cord 1 with y1, which the plan had done with there; y2 hangs at cord 3.
    const after = designOf(['aab', 'aab', 'aab']);
    const gone = planOf(after, { tied: { plan, rows: 2 } });
    expect(gone.frozenRows).toBe(2);
    expect(told(gone)).toEqual(['y1 r1 1-2, r2 2-1', 'y2 r1 3-3, r2 3-3, r3 3-3', 'y1 r3 1-2']);
    // From bare cords y1 would have gone on.
    expect(planOf(after).totals.pieces).toBe(2);
  });

  it('may not be changed any more', () => {
    const after = designOf(['abb', 'aab', 'bbb']);
    expect(planStrands(after, flatten(after), { tied: { plan, rows: 2 } })).toEqual({
      ok: false,
      problem: {
        code: 'tied-rows-changed',
        sentence:
          'Rows 1 to 2 are tied already, and the chart has changed there. Undo that change, or plan from row 1.',
      },
    });
  });

  it('keep their lengths', () => {
    const after = designOf(['aab', 'aab', 'bbb'], { tailMm: 80 });
    const planned = planStrands(after, flatten(after), { tied: { plan, rows: 1 } });
    expect(planned.ok ? '' : planned.problem.sentence).toBe(
      'Row 1 is tied with other lengths, or with carries that are now too long. Set these back, or plan from row 1.',
    );
  });
});
