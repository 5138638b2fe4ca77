import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { planQuickly } from '../../shared/tying/planners/plan-quickly.ts';
import { planQuestion } from '../../shared/tying/question/plan-question.ts';
import type { PlanQuestion } from '../../shared/tying/question/strand-choice.ts';
import { KeptStrands } from '../../shared/tying/repair/kept-strands.ts';
import { type Runs, runsOf } from '../../shared/tying/runs.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 5_000 });

/** Cells from `at` on, so many, become one yarn or bare. `at` and `yarn` are taken modulo what the chart has. */
const change = fc.record({
  at: fc.nat(),
  count: fc.oneof({ weight: 4, arbitrary: fc.constant(1) }, { weight: 1, arbitrary: fc.nat(40) }),
  yarn: fc.nat(),
});

describe('a plan that is repaired after each change', () => {
  it('is the plan made anew, run by run, strand by strand and piece by piece', () => {
    let carries = 0;
    fc.assert(
      fc.property(
        arbitraryChart({ maxColumns: 20, maxRows: 16 }),
        fc.boolean(),
        fc.array(change, { minLength: 1, maxLength: 12 }),
        ({ design, chart: first }, pays, changes) => {
          const tying = pays ? { ...design.tying, ...carrying } : design.tying;
          const kept = new KeptStrands();
          let chart = first;
          expect(kept.runsOf(chart)).toEqual(runsOf(chart));
          kept.choose(asked({ ...design, tying }, chart));
          for (const { at, count, yarn } of changes) {
            const cells = chart.cells.slice();
            const code = yarn % (design.yarns.length + 1) || BARE;
            cells.fill(code, at % cells.length, (at % cells.length) + count);
            chart = { ...chart, cells };
            const runs = kept.runsOf(chart);
            expect(runs).toEqual(runsOf(chart));
            const question = asked({ ...design, tying }, chart, runs);
            const repaired = kept.choose(question);
            const anew = planQuickly(question);
            expect(Array.from(repaired.previous)).toEqual(Array.from(anew.previous));
            expect(repaired.joins).toEqual(anew.joins);
            carries += anew.previous.filter((before) => before !== -1).length;
          }
        },
      ),
      { numRuns: 1000 },
    );
    expect(carries).toBeGreaterThan(10_000);
  });

  it('is made anew where a setting or the start corner changes', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const kept = new KeptStrands();
        kept.choose(asked(design, chart));
        const others: [Design, Chart][] = [
          [{ ...design, tying: { ...design.tying, ...carrying } }, chart],
          [design, { ...chart, startCorner: chart.startCorner === 'top-left' ? 'top-right' : 'top-left' }],
          [{ ...design, yarns: design.yarns.map((yarn) => ({ ...yarn, diameterMm: 1 })) }, chart],
        ];
        for (const [otherDesign, otherChart] of others) {
          expect(kept.runsOf(otherChart)).toEqual(runsOf(otherChart));
          const question = asked(otherDesign, otherChart);
          const choice = kept.choose(question);
          expect(Array.from(choice.previous)).toEqual(Array.from(planQuickly(question).previous));
          expect(choice.joins).toEqual(planQuickly(question).joins);
        }
      }),
      { numRuns: 200 },
    );
  });
});

/** With these a carry pays on most charts. */
const carrying = { effortMm: 200, carryMaxCords: 6, carryMaxRows: 4, workingLengthMm: 1524 };

function asked(design: Design, chart: Chart, runs?: Runs): PlanQuestion {
  const question = planQuestion(design, chart, undefined, runs);
  if (!question.ok) throw new Error(question.problem.sentence);
  return question.value;
}
