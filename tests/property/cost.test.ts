import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chart, flatten } from '../../shared/chart/chart.ts';
import { loneKnots } from '../../shared/chart/cost/lone-knots.ts';
import { looseEndCells } from '../../shared/chart/cost/loose-end-cells.ts';
import { shortRuns } from '../../shared/chart/cost/short-runs.ts';
import { type Tidied, tidied } from '../../shared/chart/cost/tidied.ts';
import { tidyCells } from '../../shared/chart/cost/tidy-cells.ts';
import { paintStrips } from '../../shared/chart/tools/strips.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply, inverse } from '../../shared/design/edits.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { knotsOf, runsOf } from '../../shared/tying/runs.ts';
import { arbitraryChart } from './arbitrary-chart.ts';
import { arbitraryDesign } from './arbitrary-design.ts';

fc.configureGlobal({ seed: 9_000 });

const total = (mask: Uint8Array) => mask.reduce((sum, each) => sum + each, 0);

/** Tidied while some cells, told by the bits of `held`, may not change. */
function forAllTidied(
  claim: (
    tidy: Tidied,
    given: { design: Design; chart: Chart; mayChange: (cell: number) => boolean },
  ) => void,
): void {
  fc.assert(
    fc.property(arbitraryChart(), fc.oneof(fc.constant(0), fc.nat()), ({ design, chart }, held) => {
      const mayChange = (cell: number) => ((held >> (cell % 31)) & 1) === 0;
      claim(tidied(chart, design.yarns, { mayChange }), { design, chart, mayChange });
    }),
    { numRuns: 1_000 },
  );
}

describe('marks of the cost', () => {
  it('find lone knots among short runs, and as many short runs as there are runs of one knot', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ chart }) => {
        const lone = loneKnots(chart);
        const short = shortRuns(chart);
        expect(lone.every((mark, cell) => mark === 0 || short[cell] === 1)).toBe(true);
        const runs = runsOf(chart);
        const single = Array.from({ length: runs.count }, (_, i) => knotsOf(runs, i)).filter((n) => n === 1);
        expect(total(short)).toBe(single.length);
      }),
      { numRuns: 500 },
    );
  });

  it('find every loose end of a plan, at a knot of its yarn', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const plan = planStrands(design, chart);
        if (!plan.ok) throw new Error(plan.problem.sentence);
        const ends = looseEndCells(plan.value);
        expect(total(ends)).toBe(plan.value.totals.looseEnds);
        expect(ends.every((count, cell) => count === 0 || (count <= 2 && chart.cells[cell] !== BARE))).toBe(
          true,
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('a tidied chart', () => {
  it('has no lone knot but those that may not change, and a chart of a single cell', () => {
    forAllTidied(({ chart: after, left }, { mayChange }) => {
      const lone = loneKnots(after);
      expect(left).toBe(total(lone));
      if (after.cells.length === 1) return;
      lone.forEach((mark, cell) => {
        if (mark === 1) expect(mayChange(cell)).toBe(false);
      });
    });
  });

  it('changes lone knots only, each to what touches it', () => {
    forAllTidied(({ chart: after, changed }, { chart }) => {
      const lone = loneKnots(chart);
      let count = 0;
      after.cells.forEach((code, cell) => {
        if (code === chart.cells[cell]) return;
        count++;
        expect(lone[cell]).toBe(1);
        expect(neighbours(after, cell)).toContain(code);
        if (code === BARE) expect(new Set(neighbours(chart, cell))).toEqual(new Set([BARE]));
      });
      expect(changed).toBe(count);
    });
  });

  it('is left as it is when it is tidied again', () => {
    forAllTidied(({ chart: after, left }, { design, mayChange }) => {
      const again = tidied(after, design.yarns, { mayChange });
      expect(again).toMatchObject({ changed: 0, left });
      expect(again.chart.cells).toEqual(after.cells);
    });
  });

  it('has no more runs than before', () => {
    forAllTidied(({ chart: after }, { chart }) => {
      expect(runsOf(after).count).toBeLessThanOrEqual(runsOf(chart).count);
    });
  });

  it('is the chart with its strips painted on', () => {
    forAllTidied(({ chart: after, strips }, { design, chart }) => {
      const paint = paintStrips(design.layers[0]!.id, strips, design);
      expect(flatten(paint ? apply(design, paint) : design).cells).toEqual(after.cells);
      expect(chart.cells).toEqual(flatten(design).cells);
    });
  });
});

describe('a tidied design', () => {
  it('loses its lone knots, all but those it tells of; locked and hidden layers stay as they are', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        const chart = flatten(design);
        const { edit, changed, left } = tidyCells(design, chart);
        const after = edit ? apply(design, edit) : design;
        const shown = flatten(after);
        expect(total(loneKnots(shown))).toBe(left);
        expect(shown.cells.filter((code, cell) => code !== chart.cells[cell])).toHaveLength(changed);
        design.layers.forEach((layer, i) => {
          if (layer.locked || !layer.visible) expect(after.layers[i]).toEqual(layer);
        });
        if (edit) expect(apply(after, inverse(design, edit))).toEqual(design);
        if (design.layers.every(({ locked }) => !locked) && chart.cells.length > 1) expect(left).toBe(0);
      }),
      { numRuns: 1_000 },
    );
  });
});

/** The codes that touch a cell. */
function neighbours({ cells, columns, rows }: Chart, cell: number): number[] {
  const [row, column] = [Math.floor(cell / columns), cell % columns];
  return [
    column > 0 ? [cells[cell - 1]!] : [],
    column < columns - 1 ? [cells[cell + 1]!] : [],
    row > 0 ? [cells[cell - columns]!] : [],
    row < rows - 1 ? [cells[cell + columns]!] : [],
  ].flat();
}
