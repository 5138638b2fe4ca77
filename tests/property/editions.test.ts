import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { apply } from '../../shared/design/edits.ts';
import { readDesign } from '../../shared/design/read-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { changesSince } from '../../shared/pattern/editions/changes-since.ts';
import { editionAgain, madeOf, publishEdition } from '../../shared/pattern/editions/edition.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 5_100 });

function value<T>(result: { ok: true; value: T } | { ok: false; problem: { sentence: string } }): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

/** What is printed of a plan: the planner's own version and what it was told are no part of it. */
const printed = ({ pins: _, ...plan }: Plan) => plan;

const liveWish = fc.option(fc.integer({ min: 1, max: 6 }));

describe('an edition', () => {
  it('is printed again with the very plan and figures that it was published with, through the file', () => {
    fc.assert(
      fc.property(arbitraryChart(), fc.boolean(), liveWish, ({ design: drawn, chart }, carefully, wish) => {
        const isWished = wish !== null && !carefully;
        const design = isWished ? { ...drawn, tying: { ...drawn.tying, liveWish: wish } } : drawn;
        // The plan of another planner stands for one that was made before ours had learnt something.
        const plan = value(carefully ? planCarefully(design, chart) : planStrands(design, chart));
        const edit = value(publishEdition(design, chart, plan, { date: '2031-05-08', note: '' }));
        const reopened = value(readDesign(writeDesign(apply(design, edit))));
        const again = value(editionAgain(reopened, reopened.editions![0]!));
        expect(printed(again.plan)).toEqual(printed(plan));
        expect(again.chart.cells).toEqual(chart.cells);
        const figures = ({ title: _, ...rest }: ReturnType<typeof materialsOf>) => rest;
        expect(figures(materialsOf(again.design, again.chart, again.plan))).toEqual(
          figures(materialsOf(design, chart, plan)),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('stays as it was published while the design goes on', () => {
    fc.assert(
      fc.property(arbitraryChart(), arbitraryChart(), (first, second) => {
        const plan = value(planStrands(first.design, first.chart));
        const edit = value(publishEdition(first.design, first.chart, plan, { date: '2031-05-08', note: '' }));
        const gone = { ...second.design, editions: edit.value! };
        const again = value(editionAgain(gone, edit.value![0]!));
        expect(again.chart.cells).toEqual(first.chart.cells);
        expect(again.design.yarns).toEqual(first.design.yarns);
      }),
      { numRuns: 50 },
    );
  });

  it('has changed since by the cells that differ, and by no others', () => {
    fc.assert(
      fc.property(arbitraryChart(), fc.array(fc.nat(), { maxLength: 20 }), ({ design, chart }, cells) => {
        const rows = design.layers[0]!.rows.map((row) => row.slice());
        for (const cell of cells) {
          const at = cell % (chart.rows * chart.columns);
          rows[Math.floor(at / chart.columns)]![at % chart.columns] = 1;
        }
        const next = { ...design, layers: [{ ...design.layers[0]!, rows }] };
        const nextChart = flatten(next);
        const before = madeOf(design, chart, value(planStrands(design, chart, { effort: 'quick' })));
        const now = madeOf(next, nextChart, value(planStrands(next, nextChart, { effort: 'quick' })));
        const differ = nextChart.cells.reduce((sum, code, i) => sum + (code === chart.cells[i] ? 0 : 1), 0);
        const told = changesSince(before, now).filter(({ kind }) => kind !== 'plan');
        if (differ === 0) expect(told).toEqual([]);
        else expect(told).toMatchObject([{ kind: 'cells', count: differ }]);
      }),
    );
  });
});
