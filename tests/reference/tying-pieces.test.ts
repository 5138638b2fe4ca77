/**
 * Strands with their pieces against HiGHS 1.15: a mixed-integer program of the whole question, a knot at a time. The
 * full plan is a bounded search, so it may cost more than the least; how much is measured and held here.
 */
import fc from 'fast-check';
import highsLoader from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Result } from '../../shared/result.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { planBy } from '../../shared/tying/planners/plan-by.ts';
import { planQuickly } from '../../shared/tying/planners/plan-quickly.ts';
import { planQuestion } from '../../shared/tying/question/plan-question.ts';
import { arbitraryChart, type ChartCase } from '../property/arbitrary-chart.ts';
import { piecesProgram } from './plain-links.ts';

let highs: Awaited<ReturnType<typeof highsLoader>>;

beforeAll(async () => {
  highs = await highsLoader();
});

describe('strands and pieces together', () => {
  it('cost what HiGHS finds on 158 of 160 small charts, and a two-thousandth more at most in all', () => {
    const sums = { least: 0, full: 0, quick: 0, careful: 0 };
    let reached = 0;
    const charts = smallCharts();
    expect(charts.length).toBe(160);
    for (const { design, chart } of charts) {
      const least = leastCostMm({ design, chart });
      const full = costMm(planStrands(design, chart));
      expect(full).toBeGreaterThan(least - 0.05);
      if (full < least + 0.05) reached++;
      sums.least += least;
      sums.full += full;
      sums.quick += costMm(planBy(planQuickly, design, chart));
      sums.careful += costMm(planCarefully(design, chart));
    }
    expect(reached).toBeGreaterThanOrEqual(158);
    expect(sums.full / sums.least).toBeLessThan(1.0005);
    // The charts are hard enough to tell planners apart.
    expect(sums.quick).toBeGreaterThan(1.001 * sums.full);
    expect(sums.careful).toBeGreaterThan(1.001 * sums.full);
  }, 120_000);
});

function costMm(plan: Result<Plan>): number {
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value.totals.costMm;
}

/** Charts of 20 to 42 knots whose pieces hold few knots and whose carries pay, so that cuts and joins matter. */
function smallCharts(): ChartCase[] {
  return fc
    .sample(arbitraryChart({ maxColumns: 7, maxRows: 6, maxYarns: 2 }), { numRuns: 1200, seed: 44 })
    .filter(({ chart }) => chart.cells.length >= 20)
    .map(({ design, chart }) => {
      const tying = { ...design.tying, effortMm: 200, carryMaxCords: 5, carryMaxRows: 4 };
      return { design: { ...design, tying }, chart };
    })
    .slice(0, 160);
}

function leastCostMm({ design, chart }: ChartCase): number {
  const question = planQuestion(design, chart);
  if (!question.ok) throw new Error(question.problem.sentence);
  let tenths = 0;
  for (const yarn of new Set(question.value.runs.yarn)) {
    const program = piecesProgram(question.value, yarn);
    const { ObjectiveValue, Status } = highs.solve(program, { mip_rel_gap: 0 });
    expect(Status).toBe('Optimal');
    tenths += ObjectiveValue;
  }
  return tenths / 10;
}
