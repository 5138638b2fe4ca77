import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { piecesIfLoose } from '../../../shared/materials/if-loose.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

function planOf(letters: string[], tying: Partial<Design['tying']> = {}) {
  const plain = designFromLetters(letters);
  const design = { ...plain, tying: { ...plain.tying, ...tying } };
  const plan = planStrands(design, flatten(design));
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

describe('a plan tied by a looser hand', () => {
  // A knot takes 36.8 mm; a piece of 500 mm without its tails of 65 mm holds 10 of them.
  const tying = { workingLengthMm: 500 };

  it('takes the pieces of the plan where the hand is the plan’s own', () => {
    const plan = planOf(['aaaaaaaaaa', 'aaaabbbbaa'], tying);
    expect(plan.settings.knotMm.y1).toBe(36.8);
    const own = Object.fromEntries(Object.entries(plan.perYarn).map(([id, { pieces }]) => [id, pieces]));
    expect(piecesIfLoose(plan, plan.settings.knotMm)).toEqual(own);
    expect(piecesIfLoose(plan, {})).toEqual(own);
  });

  it('begins another piece as soon as the last knot no longer fits', () => {
    const plan = planOf(['aaaaaaaaaa'], tying);
    expect(piecesIfLoose(plan, { y1: 37 })).toEqual({ y1: 1 });
    expect(piecesIfLoose(plan, { y1: 37.1 })).toEqual({ y1: 2 });
    expect(piecesIfLoose(plan, { y1: 37.1 / 2 })).toEqual({ y1: 1 });
  });

  it('carries no further than the piece reaches', () => {
    const plan = planOf(['aaaabbaaaa'], { workingLengthMm: 500 });
    expect(plan.perYarn.y1!.pieces).toBe(1);
    // 8 knots of 43 and a carry of 15.8 mm fit into 370 mm; a first run of 4 x 90 leaves no room for the carry.
    expect(piecesIfLoose(plan, { y1: 43 }).y1).toBe(1);
    expect(piecesIfLoose(plan, { y1: 90 }).y1).toBe(2);
  });

  it('takes its reserve first, and no more pieces while that lasts', () => {
    // With 10 % of 500 mm kept free a piece is planned to hold 320 mm: 8 knots.
    const plan = planOf(['aaaaaaaaaaaaaaaa'], { ...tying, reserveShare: 0.1 });
    expect(plan.perYarn.y1!.pieces).toBe(2);
    expect(piecesIfLoose(plan, plan.settings.knotMm)).toEqual({ y1: 2 });
    expect(piecesIfLoose(plan, { y1: 370 / 8 })).toEqual({ y1: 2 });
    expect(piecesIfLoose(plan, { y1: 370 / 8 + 0.1 })).toEqual({ y1: 3 });
  });

  it('ends its pieces where they were planned to, as far as they reach', () => {
    // 500 mm would hold all ten knots, yet the plan joins after six of them, as its labels say.
    const plan = planOf(['aaaaaaaaaa'], { ...tying, reserveShare: 0.3 });
    expect(plan.perYarn.y1!.pieces).toBe(2);
    expect(piecesIfLoose(plan, { y1: 36 })).toEqual({ y1: 2 });
  });

  it('ties at least a knot with each piece, however long a knot is', () => {
    expect(piecesIfLoose(planOf(['aaa'], tying), { y1: 4000 })).toEqual({ y1: 3 });
  });
});
