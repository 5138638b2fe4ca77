import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { bundlesOf } from '../../../../shared/materials/bundles/bundles.ts';
import { type Fitting, fittedPlan, usualFitting } from '../../../../shared/materials/bundles/fitted-plan.ts';
import { planAsCut } from '../../../../shared/materials/bundles/plan-as-cut.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import { tyingOrder } from '../../../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../../../notation.ts';

// A knot takes 36.8 mm: 2 sqrt((5 pi)^2 + 2.4^2) + 5, cord 3 mm and yarn 2 mm thick. A tail is 65 mm long.
const threeKnotsMm = 240.4;

function made(letters: string[], tying: Partial<Design['tying']> = {}) {
  const base = designFromLetters(letters);
  const design = { ...base, tying: { ...base.tying, ...tying } };
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const bundlesIn = (fitting?: Fitting) =>
    bundlesOf(tyingOrder(chart, fitting ? fittedPlan(plan.value, fitting) : plan.value));
  return { design, chart, plan: plan.value, bundlesIn };
}

describe('bundles', () => {
  it('hold all pieces of a yarn where each is cut at the working length', () => {
    const { bundles, savedMm, totalMm, pieces } = made(['a-a-b', '-----']).bundlesIn();
    expect(bundles).toEqual([
      {
        yarn: 'y1',
        cutMm: 1524,
        totalMm: 3048,
        pieces: [
          { number: 1, row: 1, cord: 1, knots: 1, usedMm: 166.8 },
          { number: 2, row: 1, cord: 3, knots: 1, usedMm: 166.8 },
        ],
      },
      {
        yarn: 'y2',
        cutMm: 1524,
        totalMm: 1524,
        pieces: [{ number: 1, row: 1, cord: 5, knots: 1, usedMm: 166.8 }],
      },
    ]);
    expect({ savedMm, totalMm, pieces }).toEqual({ savedMm: 0, totalMm: 4572, pieces: 3 });
  });

  it('are cut by what each piece ties, with tails and reserve, up to the next step', () => {
    const { bundles, savedMm } = made(['a--aaaaa-a']).bundlesIn(usualFitting);
    // One knot: 130 + 36.8 + 3.7 = 170.5; five: 130 + 184 + 18.4 = 332.4.
    expect(bundles.map(({ cutMm, pieces }) => [cutMm, pieces.map(({ number }) => number)])).toEqual([
      [350, [2]],
      [200, [1, 3]],
    ]);
    expect(savedMm).toBe(3 * 1524 - 350 - 2 * 200);
  });

  it('never cut a piece longer than the working length, for the plan fills it to the end', () => {
    const { bundlesIn } = made(['aaaa'], { workingLengthMm: threeKnotsMm });
    const lengths = bundlesIn({ roundUpMm: 10, reserve: 0.1 }).bundles.map(({ cutMm }) => cutMm);
    expect(lengths).toEqual([threeKnotsMm, 180]);
  });

  it('cut a piece at the working length that would come within a step of it', () => {
    const { bundlesIn } = made(['aaaa'], { workingLengthMm: threeKnotsMm });
    const lengths = bundlesIn({ roundUpMm: 50, reserve: 0.1 }).bundles.map(({ cutMm }) => cutMm);
    expect(lengths).toEqual([threeKnotsMm]);
  });

  it('number a joined piece among the others of its yarn, where it comes in', () => {
    // The second piece ties two knots, and the turn between them: a third would not fit.
    const { bundles } = made(['aaaa', 'aaaa'], { workingLengthMm: threeKnotsMm }).bundlesIn();
    expect(bundles[0]!.pieces.map(({ number, row, cord }) => [number, row, cord])).toEqual([
      [1, 1, 1],
      [2, 1, 4],
      [3, 2, 3],
    ]);
  });
});

describe('materials of a design whose pieces are cut to measure', () => {
  const { design, chart, plan, bundlesIn } = made(['aaaabbbb', 'bbbbaaaa']);
  const whole = materialsOf(design, chart, plan);
  const fitted = materialsOf({ ...design, bundles: { fitted: true } }, chart, plan);

  it('buy what is cut, in every figure', () => {
    expect(whole.totals.yarnCutMm).toBe(plan.totals.cutMm);
    expect(fitted.totals.yarnCutMm).toBe(bundlesIn(usualFitting).totalMm);
    expect(fitted.totals.yarnCutMm).toBeLessThan(whole.totals.yarnCutMm);
    expect(fitted.totals.yarnMassG).toBeLessThan(whole.totals.yarnMassG);
    expect(fitted.totals.massG).toBeLessThan(whole.totals.massG);
    expect([fitted.tying.fitted, whole.tying.fitted]).toEqual([true, false]);
    fitted.yarns.forEach((yarn, i) => {
      const before = whole.yarns[i]!;
      expect(yarn.cutMm).toBeLessThan(before.cutMm);
      expect(yarn.withMarginMm).toBeCloseTo(yarn.cutMm * 1.1, 9);
      expect(yarn.leftOverMm).toBeCloseTo(yarn.cutMm - yarn.usedMm, 6);
      expect([yarn.usedMm, yarn.pieces, yarn.knots]).toEqual([before.usedMm, before.pieces, before.knots]);
    });
  });

  it('are the same, whether the plan comes fitted already or not', () => {
    const again = { ...design, bundles: { fitted: true } };
    expect(materialsOf(again, chart, planAsCut(again, plan))).toEqual(fitted);
  });
});

describe('a plan as it is cut', () => {
  it('has whole pieces unless the design says that they are cut to measure', () => {
    const { plan } = made(['aaaabbbb']);
    expect(planAsCut({}, plan)).toBe(plan);
    expect(planAsCut({ bundles: { fitted: false } }, plan)).toBe(plan);
    expect(planAsCut({ bundles: { fitted: true } }, plan)).toEqual(fittedPlan(plan, usualFitting));
  });
});
