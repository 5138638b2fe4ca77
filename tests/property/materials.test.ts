import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { fringeMm } from '../../shared/gauge/fringe.ts';
import { gaugeOf } from '../../shared/gauge/gauge.ts';
import { planAsCut } from '../../shared/materials/bundles/plan-as-cut.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import { planByHand } from '../../shared/materials/plan-by-hand.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 5_000 });

const sum = (numbers: number[]) => numbers.reduce((a, b) => a + b, 0);

function forAll(
  claim: (materials: Materials, given: { design: Design; chart: Chart; plan: Plan }) => void,
): void {
  fc.assert(
    fc.property(
      arbitraryChart({ maxColumns: 30 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.boolean(),
      (made, yarnMargin, fitted) => {
        const design = { ...made.design, yarnMargin, bundles: { fitted } };
        const plan = planStrands(design, made.chart);
        if (!plan.ok) throw new Error(plan.problem.sentence);
        const given = { design, chart: made.chart, plan: planAsCut(design, plan.value) };
        claim(materialsOf(design, made.chart, plan.value), given);
      },
    ),
    { numRuns: 300 },
  );
}

describe('materials', () => {
  it('add up, from pieces to yarns to the whole', () => {
    forAll(({ yarns, totals }, { chart, plan }) => {
      for (const yarn of yarns) {
        const pieces = plan.strands
          .filter((strand) => strand.yarn === yarn.id)
          .flatMap((strand) => strand.pieces);
        expect(yarn.cutMm).toBeCloseTo(sum(pieces.map(({ cutMm }) => cutMm)), 6);
        expect(yarn.knottedMm + yarn.carriedMm + yarn.tailsMm + yarn.leftOverMm).toBeCloseTo(yarn.cutMm, 6);
      }
      expect(sum(yarns.map(({ cutMm }) => cutMm))).toBeCloseTo(totals.yarnCutMm, 6);
      expect(sum(yarns.map(({ massG }) => massG))).toBeCloseTo(totals.yarnMassG, 9);
      expect(sum(yarns.map(({ pieces }) => pieces))).toBe(totals.pieces);
      expect(sum(yarns.map(({ strands }) => strands))).toBe(totals.strands);
      expect(sum(yarns.map(({ knots }) => knots))).toBe(totals.knots);
      expect(totals.knots + totals.bareCells).toBe(chart.cells.length);
      expect(totals.bareCells).toBe(chart.cells.filter((code) => code === BARE).length);
      expect(totals.looseEnds).toBe(2 * totals.pieces);
    });
  });

  it('take no piece more by a hand that is looser by no more than what is kept in reserve', () => {
    let kept = 0;
    forAll(({ yarns }, { plan, design }) => {
      const { knotMm, reserveShare = 0 } = plan.settings;
      const times = Object.fromEntries(Object.keys(knotMm).map((id) => [id, 1 + reserveShare]));
      const byHand = planByHand(plan, times);
      for (const { id, pieces, cutMm, usedMm, tailsMm } of yarns) {
        // A piece that is cut to measure has its own 10 % in reserve; only one of the working length has the plan's.
        if (design.bundles?.fitted && reserveShare > 0.1) continue;
        expect(byHand[id]).toMatchObject({ pieces, cutMm });
        expect(byHand[id]!.usedMm).toBeCloseTo(usedMm + (usedMm - tailsMm) * reserveShare, 6);
      }
      if (reserveShare > 0) kept++;
    });
    expect(kept).toBeGreaterThan(100);
  });

  it('are the plan’s own by the plan’s own hand, and never less by a looser one', () => {
    forAll(({ yarns }, { plan }) => {
      let before = planByHand(plan, {});
      for (const { id, pieces, usedMm, cutMm } of yarns) {
        expect(before[id]!.pieces).toBe(pieces);
        expect(before[id]!.usedMm).toBeCloseTo(usedMm, 6);
        expect(before[id]!.cutMm).toBeCloseTo(cutMm, 6);
      }
      for (const looser of [1.01, 1.1, 1.5, 3]) {
        const now = planByHand(plan, Object.fromEntries(yarns.map(({ id }) => [id, looser])));
        for (const { id, cutMm } of yarns) {
          const { pieces: count, usedMm, cutMm: cut } = now[id]!;
          expect(count).toBeGreaterThanOrEqual(before[id]!.pieces);
          expect(cut).toBeGreaterThanOrEqual(cutMm);
          // No piece is long enough for a hand whose knots are longer than it.
          const { workingLengthMm, tailMm, knotMm } = plan.settings;
          if (knotMm[id]! * looser > workingLengthMm - 2 * tailMm) continue;
          expect(cut + 0.001).toBeGreaterThanOrEqual(usedMm);
        }
        before = now;
      }
    });
  });

  it('buy skeins that hold the yarn with its margin, and not one too many', () => {
    forAll(({ yarns }, { design }) => {
      for (const { cutMm, withMarginMm, skeins, skeinMm } of yarns) {
        expect(withMarginMm).toBeCloseTo(cutMm * (1 + design.yarnMargin), 6);
        expect(skeins * skeinMm).toBeGreaterThan(withMarginMm - 1);
        expect((skeins - 1) * skeinMm).toBeLessThan(withMarginMm);
      }
    });
  });

  it('cut a cord for every two columns, each long enough for both of its legs and none much too long', () => {
    forAll(({ cords, columns }, { design }) => {
      const fringes = fringeMm(columns, design.fringe);
      const aboveMm =
        cords.mountPerLegMm + design.rows * gaugeOf(design).rowHeightMm * (1 + design.cord.takeUp);
      const covered = new Uint8Array(columns);
      for (const { cutMm, count, columns: ranges } of cords.groups) {
        let inGroup = 0;
        for (const { from, to } of ranges) {
          for (let column = from; column <= to; column += 2) {
            const last = Math.min(column + 1, to);
            const legMm = aboveMm + Math.max(fringes[column - 1]!, fringes[last - 1]!) + design.cord.trimMm;
            expect(cutMm).toBeGreaterThan(2 * legMm - 0.001);
            expect(cutMm).toBeLessThan(2 * legMm + design.cord.roundUpMm);
            for (let c = column; c <= last; c++) covered[c - 1]!++;
            inGroup++;
          }
        }
        expect(inGroup).toBe(count);
      }
      expect(covered.every((times) => times === 1)).toBe(true);
      expect(sum(cords.groups.map(({ count }) => count))).toBe(cords.cutCords);
      expect(2 * cords.cutCords - cords.spareLegs).toBe(columns);
      expect(sum(cords.groups.map(({ count, cutMm }) => count * cutMm))).toBeCloseTo(cords.totalMm, 6);
      expect(cords.groups.map(({ cutMm }) => cutMm)).toEqual(
        cords.groups.map(({ cutMm }) => cutMm).toSorted((a, b) => b - a),
      );
    });
  });
});
