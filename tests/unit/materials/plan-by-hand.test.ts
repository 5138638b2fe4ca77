import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { fittedPlan, usualFitting } from '../../../shared/materials/bundles/fitted-plan.ts';
import { planByHand } from '../../../shared/materials/plan-by-hand.ts';
import type { PlainPlan } from '../../../shared/tying/plan.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

function planOf(letters: string[], tying: Partial<Design['tying']> = {}) {
  const plain = designFromLetters(letters);
  const design = { ...plain, tying: { ...plain.tying, ...tying } };
  const plan = planStrands(design, flatten(design));
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

/** Pieces of each yarn where the first yarn's knots take so many mm. */
function piecesAt(plan: PlainPlan, knotMm: number): Record<string, number> {
  const byHand = planByHand(plan, { y1: knotMm / plan.settings.knotMm.y1! });
  return Object.fromEntries(Object.entries(byHand).map(([id, { pieces }]) => [id, pieces]));
}

describe('a plan tied by another hand', () => {
  // A knot takes 36.8 mm; a piece of 500 mm without its tails of 65 mm holds 10 of them.
  const tying = { workingLengthMm: 500 };

  it('takes the pieces and lengths of the plan where the hand is the plan’s own', () => {
    const plan = planOf(['aaaaaaaaaa', 'aaaabbbbaa'], tying);
    expect(plan.settings.knotMm.y1).toBe(36.8);
    const own = Object.fromEntries(
      Object.entries(plan.perYarn).map(([id, { pieces, usedMm, cutMm }]) => [id, { pieces, usedMm, cutMm }]),
    );
    expect(planByHand(plan, { y1: 1, y2: 1 })).toEqual(own);
    expect(planByHand(plan, {})).toEqual(own);
  });

  it('cuts the same pieces and uses less of them where the hand is tighter', () => {
    const plan = planOf(['aaaaaaaaaa'], tying);
    expect(planByHand(plan, { y1: 0.5 })).toEqual({ y1: { pieces: 1, usedMm: 130 + 184, cutMm: 500 } });
  });

  it('begins another piece as soon as the last knot no longer fits, and cuts it as long as it is needed', () => {
    const plan = planOf(['aaaaaaaaaa'], tying);
    expect(piecesAt(plan, 37)).toEqual({ y1: 1 });
    expect(piecesAt(plan, 37.1)).toEqual({ y1: 2 });
    // Nine knots of 40 mm fit; the tenth takes a piece of 40 mm and two tails.
    const { pieces, usedMm, cutMm } = planByHand(plan, { y1: 40 / 36.8 }).y1!;
    expect(pieces).toBe(2);
    expect(usedMm).toBeCloseTo(400 + 260, 6);
    expect(cutMm).toBeCloseTo(500 + 40 + 130, 6);
  });

  it('carries no further than the piece reaches', () => {
    const plan = planOf(['aaaabbaaaa'], { workingLengthMm: 500 });
    expect(plan.perYarn.y1!.pieces).toBe(1);
    // 8 knots of 43 and a carry of 18.4 mm fit into 370 mm; a first run of 4 x 90 leaves no room for the carry.
    expect(piecesAt(plan, 43).y1).toBe(1);
    expect(piecesAt(plan, 90).y1).toBe(2);
  });

  it('takes its reserve first, and no more pieces while that lasts', () => {
    // With 10 % of 500 mm kept free a piece is planned to hold 320 mm: 8 knots.
    const plan = planOf(['aaaaaaaaaaaaaaaa'], { ...tying, reserveShare: 0.1 });
    expect(plan.perYarn.y1!.pieces).toBe(2);
    expect(piecesAt(plan, 36.8)).toEqual({ y1: 2 });
    expect(piecesAt(plan, 370 / 8)).toEqual({ y1: 2 });
    expect(piecesAt(plan, 370 / 8 + 0.1)).toEqual({ y1: 3 });
  });

  it('ends its pieces where they were planned to, as far as they reach', () => {
    // 500 mm would hold all ten knots, yet the plan joins after six of them, as its labels say.
    const plan = planOf(['aaaaaaaaaa'], { ...tying, reserveShare: 0.3 });
    expect(plan.perYarn.y1!.pieces).toBe(2);
    expect(piecesAt(plan, 36)).toEqual({ y1: 2 });
  });

  it('joins a piece that was cut to measure where it runs out, and begins the next where it was planned to', () => {
    // Two pieces of five knots, 184 mm: with tails and 10 %, 332.4 mm, so 350 mm, which leave 220 mm to tie with.
    const plan = fittedPlan(planOf(['aaaaa--aaaaa'], { workingLengthMm: 600 }), usualFitting);
    expect(plan.strands.flatMap(({ pieces }) => pieces.map(({ cutMm }) => cutMm))).toEqual([350, 350]);
    expect(piecesAt(plan, 44)).toEqual({ y1: 2 });
    // Four knots of 45 mm fit, the fifth takes a piece of its own.
    const { pieces, usedMm, cutMm } = planByHand(plan, { y1: 45 / 36.8 }).y1!;
    expect(pieces).toBe(4);
    expect(usedMm).toBeCloseTo(10 * 45 + 4 * 130, 6);
    expect(cutMm).toBeCloseTo(2 * 350 + 2 * (45 + 130), 6);
  });

  it('ties at least a knot with each piece, however long a knot is', () => {
    expect(piecesAt(planOf(['aaa'], tying), 4000)).toEqual({ y1: 3 });
  });
});
