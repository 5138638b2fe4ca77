/** Bundles are the plan's pieces sorted by yarn and length: none is lost, none too short, and fitting never costs yarn. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import type { YarnId } from '../../shared/design/codes.ts';
import { type Bundles, bundlesOf } from '../../shared/materials/bundles/bundles.ts';
import { type Fitting, fittedPlan } from '../../shared/materials/bundles/fitted-plan.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import { planFaults } from '../../shared/tying/laws/check-plan.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { tyingOrder } from '../../shared/tying/steps/tying-order.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 8_000 });

const fittings: fc.Arbitrary<Fitting> = fc.record({
  roundUpMm: fc.oneof(
    fc.constantFrom(0.1, 6.35, 12.7, 50, 5000),
    fc.double({ min: 0.1, max: 200, noNaN: true }),
  ),
  reserve: fc.oneof(fc.constantFrom(0, 0.1, 3), fc.double({ min: 0, max: 1, noNaN: true })),
});

interface Cut {
  readonly plan: Plan;
  readonly fitting: Fitting;
  readonly fitted: Plan;
  readonly chart: Chart;
}

function forAll(claim: (cut: Cut) => void): void {
  fc.assert(
    fc.property(arbitraryChart(), fittings, ({ design, chart }, fitting) => {
      const plan = planCarefully(design, chart);
      if (!plan.ok) throw new Error(plan.problem.sentence);
      claim({ plan: plan.value, fitting, fitted: fittedPlan(plan.value, fitting), chart });
    }),
    { numRuns: 300 },
  );
}

const tenths = (mm: number) => Math.round(mm * 10);
const sum = (numbers: number[]) => numbers.reduce((a, b) => a + b, 0);

function piecesOf({ bundles }: Bundles, yarn: YarnId) {
  return bundles
    .filter((bundle) => bundle.yarn === yarn)
    .flatMap(({ pieces, cutMm }) => pieces.map((piece) => ({ ...piece, cutMm })));
}

describe('a fitted plan', () => {
  it('keeps every law of tying, and all but its cuts', () => {
    forAll(({ plan, fitted, chart }) => {
      expect(planFaults(fitted, chart)).toEqual([]);
      const tied = ({ strands }: Plan) =>
        strands.map(({ pieces }) => pieces.map(({ cutMm: _, leftOverMm: __, ...rest }) => rest));
      expect(tied(fitted)).toEqual(tied(plan));
      expect({ ...fitted.totals, cutMm: 0 }).toEqual({ ...plan.totals, cutMm: 0 });
    });
  });

  it('cuts no piece longer than it was, and as long as its yarn with the reserve unless that is the working length', () => {
    forAll(({ plan, fitted, fitting: { roundUpMm, reserve } }) => {
      for (const piece of fitted.strands.flatMap(({ pieces }) => pieces)) {
        const { workingLengthMm } = plan.settings;
        const needMm = piece.usedMm + reserve * (piece.knottedMm + piece.carriedMm);
        expect(piece.cutMm).toBeGreaterThanOrEqual(piece.usedMm);
        expect(piece.cutMm).toBeLessThanOrEqual(workingLengthMm);
        if (piece.cutMm === workingLengthMm) continue;
        expect(piece.cutMm).toBeGreaterThan(needMm - 0.001);
        // A step is measured in tenths of a mm, as everything is.
        expect(piece.cutMm).toBeLessThan(needMm + roundUpMm + 0.2);
      }
    });
  });
});

describe('bundles', () => {
  it('hold each piece of the plan once, numbered in the order of use', () => {
    forAll(({ plan, fitted, chart }) => {
      for (const each of [plan, fitted]) {
        const bundles = bundlesOf(tyingOrder(chart, each));
        for (const yarn of Object.keys(each.perYarn) as YarnId[]) {
          const pieces = piecesOf(bundles, yarn).toSorted((a, b) => a.number - b.number);
          expect(pieces.map(({ number }) => number)).toEqual(pieces.map((_, i) => i + 1));
          expect(pieces.map(({ row }) => row)).toEqual(
            pieces.map(({ row }) => row).toSorted((a, b) => a - b),
          );
          const planned = each.strands
            .filter((strand) => strand.yarn === yarn)
            .flatMap((strand) => strand.pieces)
            .map(({ stretches, knots, usedMm, cutMm }) =>
              [stretches[0]!.row, stretches[0]!.from, knots, usedMm, cutMm].join(' '),
            );
          const bundled = pieces.map(({ row, cord, knots, usedMm, cutMm }) =>
            [row, cord, knots, usedMm, cutMm].join(' '),
          );
          expect(bundled.toSorted()).toEqual(planned.toSorted());
        }
      }
    });
  });

  it('have one length each, the longest of a yarn first, and in each the order of use', () => {
    forAll(({ fitted, chart }) => {
      const { bundles } = bundlesOf(tyingOrder(chart, fitted));
      bundles.forEach((bundle, i) => {
        const numbers = bundle.pieces.map(({ number }) => number);
        expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
        const before = bundles[i - 1];
        if (before?.yarn === bundle.yarn) expect(before.cutMm).toBeGreaterThan(bundle.cutMm);
      });
      const yarns = bundles.map(({ yarn }) => yarn).filter((yarn, i, all) => yarn !== all[i - 1]);
      expect(yarns).toEqual(Object.keys(fitted.perYarn));
    });
  });

  it('add up to what the plan cuts, and what fitting saves to what it would cut otherwise', () => {
    forAll(({ plan, fitted, chart }) => {
      const whole = bundlesOf(tyingOrder(chart, plan));
      const fit = bundlesOf(tyingOrder(chart, fitted));
      for (const [{ bundles, pieces, totalMm }, { totals }] of [
        [whole, plan],
        [fit, fitted],
      ] as const) {
        expect(sum(bundles.map((bundle) => bundle.pieces.length))).toBe(pieces);
        expect(pieces).toBe(totals.pieces);
        expect(tenths(totalMm)).toBe(sum(bundles.map((bundle) => tenths(bundle.totalMm))));
        expect(totalMm).toBe(totals.cutMm);
        for (const { cutMm, totalMm: together, pieces: alike } of bundles)
          expect(tenths(together)).toBe(tenths(cutMm) * alike.length);
      }
      expect(whole.savedMm).toBe(0);
      expect(tenths(fit.savedMm)).toBe(tenths(whole.totalMm) - tenths(fit.totalMm));
      expect(fit.savedMm).toBeGreaterThanOrEqual(0);
    });
  });
});
