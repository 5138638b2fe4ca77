import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { gaugeOf, knotMm } from '../../../shared/gauge/gauge.ts';
import { planByHand } from '../../../shared/materials/plan-by-hand.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { usedAtGaugeMm } from '../../../shared/materials/used-at-gauge.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../notation.ts';

describe('the yarn that is used at another gauge', () => {
  const design = designFromLetters(['aabba', 'abbba', 'a---a']);
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const { yarns, totals } = materialsOf(design, chart, plan.value);
  const gauge = gaugeOf(design);

  it('is the plan’s own at its own gauge', () => {
    // Knots are planned in tenths of a mm.
    expect(usedAtGaugeMm(design, yarns, gauge)).toBeCloseTo(totals.uncertain.yarnUsedMm.value, 0);
  });

  it('is what a hand of that gauge uses of it, while no piece runs out', () => {
    const looser = { ...gauge, yarnFactor: 1.2 };
    const { settings } = plan.value;
    const times = Object.fromEntries(
      design.yarns.flatMap((yarn) => {
        const mm = settings.knotMm[yarn.id];
        return mm === undefined ? [] : [[yarn.id, knotMm(design, yarn, looser) / mm]];
      }),
    );
    const byHand = Object.values(planByHand(plan.value, times)).reduce((sum, { usedMm }) => sum + usedMm, 0);
    expect(usedAtGaugeMm(design, yarns, looser)).toBeCloseTo(byHand, 6);
    expect(byHand).toBeGreaterThan(totals.uncertain.yarnUsedMm.value);
  });

  it('leaves out a yarn that is gone', () => {
    expect(usedAtGaugeMm({ ...design, yarns: [] }, yarns, gauge)).toBe(0);
  });
});
