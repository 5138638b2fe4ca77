import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { planFaults } from '../../shared/tying/laws/check-plan.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../shared/tying/plan-wishes.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 7_000 });

/** A chart with a plan, so many rows of it tied, and another picture in the rows below. */
const interrupted = fc
  .tuple(arbitraryChart({ maxColumns: 12 }), fc.nat(), fc.array(fc.nat()), fc.boolean())
  .map(([{ design, chart }, tied, yarns, pays]) => {
    const carrying = { effortMm: 200, carryMaxCords: 6, carryMaxRows: 4 };
    const rows = tied % (chart.rows + 1);
    const cells = chart.cells.slice();
    yarns.forEach((yarn, i) => {
      const cell = rows * chart.columns + i;
      if (cell < cells.length) cells[cell] = yarn % (design.yarns.length + 1) || BARE;
    });
    return {
      design: pays ? { ...design, tying: { ...design.tying, ...carrying } } : design,
      chart,
      rows,
      changed: { ...chart, cells },
    };
  });

describe('a plan for a hanging of which some rows are tied', () => {
  it.each(['quick', 'full'] as const)('keeps every law of tying, and all that is tied (%s)', (effort) => {
    let goOn = 0;
    fc.assert(
      fc.property(interrupted, ({ design, chart, rows, changed }) => {
        const first = planned(design, chart);
        const second = planned(design, changed, { effort, tied: { plan: first, rows } });
        expect(planFaults(second, changed)).toEqual([]);
        expect(second.frozenRows).toBe(rows);
        expect(tiedPart(second, rows)).toEqual(tiedPart(first, rows));
        goOn += hanging(second, rows).length;
        // No strand goes on that the first plan had ended.
        for (const strand of hanging(second, rows)) expect(hanging(first, rows)).toContain(strand);
      }),
      { numRuns: 500 },
    );
    expect(goOn).toBeGreaterThan(50);
  });

  it('keeps a wish for few live strands below the tied rows, however many hang among them', () => {
    let crowded = 0;
    fc.assert(
      fc.property(interrupted, fc.nat(2), ({ design, chart, rows, changed }, liveWish) => {
        const first = planned(design, chart);
        const second = planned(design, changed, { liveWish, tied: { plan: first, rows } });
        expect(planFaults(second, changed)).toEqual([]);
        const live = liveBelow(second);
        for (const count of live.slice(Math.max(0, rows - 1))) expect(count).toBeLessThanOrEqual(liveWish);
        if (live.some((count) => count > liveWish)) crowded++;
      }),
      { numRuns: 500 },
    );
    expect(crowded).toBeGreaterThan(20);
  });

  it('costs no more than the plan it was tied by, where nothing has changed', () => {
    fc.assert(
      fc.property(interrupted, ({ design, chart, rows }) => {
        const first = planned(design, chart, { effort: 'quick' });
        const second = planned(design, chart, { tied: { plan: first, rows } });
        expect(second.totals.costMm).toBeLessThanOrEqual(first.totals.costMm);
      }),
      { numRuns: 300 },
    );
  });
});

function planned(design: Design, chart: Chart, wishes?: PlanWishes): Plan {
  const plan = planStrands(design, chart, wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

/** How many strands hang below each row, row 1 first. */
function liveBelow({ strands, rows }: Plan): number[] {
  const live = Array<number>(rows).fill(0);
  for (const { pieces } of strands) {
    for (const { stretches } of pieces) {
      for (let row = stretches[0]!.row; row < stretches.at(-1)!.row; row++) live[row - 1]!++;
    }
  }
  return live;
}

/** The pieces' stretches of the first rows, strand by strand. */
function tiedPart({ strands }: Plan, rows: number) {
  return strands
    .map(({ yarn, pieces }) => ({
      yarn,
      pieces: pieces
        .map(({ stretches }) => stretches.filter(({ row }) => row <= rows))
        .filter((stretches) => stretches.length > 0),
    }))
    .filter(({ pieces }) => pieces.length > 0);
}

/** Of each strand that is carried below the rows: where it was last tied. */
function hanging({ strands }: Plan, rows: number): string[] {
  return strands.flatMap(({ pieces }) =>
    pieces.flatMap(({ stretches }) => {
      const last = stretches.findLast(({ row }) => row <= rows);
      return last && stretches.at(-1)!.row > rows ? [`${last.row} ${last.to}`] : [];
    }),
  );
}
