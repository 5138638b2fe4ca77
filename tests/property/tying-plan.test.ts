import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chart, flatten } from '../../shared/chart/chart.ts';
import { BARE, yarnIdOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import { planNeverCarrying } from '../../shared/tying/careful-person/plan-never-carrying.ts';
import { planFaults } from '../../shared/tying/laws/check-plan.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { arbitraryChart } from './arbitrary-chart.ts';
import { plainCarefulPerson } from './plain-careful-person.ts';

fc.configureGlobal({ seed: 2_000 });

function planned(design: Design, chart: Chart, planner = planCarefully): Plan {
  const plan = planner(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

describe('the plan of a careful person', () => {
  it('keeps every law of tying', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        expect(planFaults(planned(design, chart), chart)).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });

  it('ties just as one does who looks at all parked strands at each run', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const plan = planned(design, chart);
        const tied = plan.strands.map(({ pieces }) => pieces.map(({ stretches }) => stretches));
        expect(tied).toEqual(plainCarefulPerson(plan.settings, chart));
      }),
      { numRuns: 1000 },
    );
  });

  it('has a piece for each strand and each join, and two loose ends a piece', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const { totals, perYarn } = planned(design, chart);
        expect(totals.pieces).toBe(totals.strands + totals.joins);
        expect(totals.looseEnds).toBe(2 * totals.pieces);
        const knots = chart.cells.filter((code) => code !== BARE).length;
        expect(totals.knots).toBe(knots);
        expect(Object.values(perYarn).reduce((sum, yarn) => sum + yarn.knots, 0)).toBe(knots);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same each time', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        expect(JSON.stringify(planned(design, chart))).toBe(JSON.stringify(planned(design, chart)));
      }),
      { numRuns: 100 },
    );
  });

  it('has every length in whole tenths of a mm, without the noise of binary fractions', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const { settings, ...rest } = planned(design, chart);
        const { slack, pitchMm, rowHeightMm, ...lengths } = settings;
        for (const text of JSON.stringify({ lengths, ...rest, chartHash: '' }).match(/Mm":-?[\d.e+-]+/g) ??
          []) {
          expect(text).toMatch(/^Mm":\d+(\.\d)?$/);
        }
        expect([slack, pitchMm, rowHeightMm].every((number) => number > 0)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a mirrored chart with the other start corner', () => {
  it('takes the same strands, pieces and yarn', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const mirrored = withRows(
          { ...design, startCorner: design.startCorner === 'top-left' ? 'top-right' : 'top-left' },
          (row) => row.toReversed(),
        );
        const { totals, perYarn } = planned(design, chart);
        const other = planned(mirrored, flatten(mirrored));
        expect(other.totals).toEqual(totals);
        expect(other.perYarn).toEqual(perYarn);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a recoloured chart', () => {
  it('is tied by the same strands', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const alike = { ...design, yarns: design.yarns.map((yarn) => ({ ...yarn, diameterMm: 1 })) };
        const count = design.yarns.length;
        const recoloured = withRows(alike, (row) =>
          row.map((code) => (code === BARE ? BARE : count + 1 - code)),
        );
        const before = planned(alike, chart);
        const after = planned(recoloured, flatten(recoloured));
        expect(after.totals).toEqual(before.totals);
        const renamed = before.strands.map(({ yarn, pieces }) => ({
          yarn: yarnIdOf(count + 1 - Number(yarn.slice(1))),
          pieces,
        }));
        expect(after.strands).toEqual(renamed);
      }),
      { numRuns: 300 },
    );
  });
});

describe('the careful person against one who never carries', () => {
  it('takes no more pieces of any yarn, so has no more loose ends and cuts no more', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const careful = planned(design, chart);
        const never = planned(design, chart, planNeverCarrying);
        expect(planFaults(never, chart)).toEqual([]);
        expect(never.totals.carries + never.totals.turns + never.totals.liveMax).toBe(0);
        expect(careful.totals.looseEnds).toBeLessThanOrEqual(never.totals.looseEnds);
        for (const [id, { pieces, cutMm }] of Object.entries(careful.perYarn)) {
          const other = never.perYarn[id as keyof typeof never.perYarn]!;
          expect(pieces).toBeLessThanOrEqual(other.pieces);
          expect(cutMm).toBeLessThanOrEqual(other.cutMm);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('costs no more where each carry saves a piece and the dearest carry costs no more than a piece', () => {
    let compared = 0;
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const careful = planned(design, chart);
        const never = planned(design, chart, planNeverCarrying);
        const { slack, carryMaxCords, carryMaxRows, ...s } = careful.settings;
        const dearest =
          slack * (carryMaxCords * s.pitchMm + carryMaxRows * s.rowHeightMm) +
          s.rowPriceMm * carryMaxRows +
          0.05;
        const links = careful.totals.carries + careful.totals.turns;
        const saved = never.totals.pieces - careful.totals.pieces;
        if (links === 0 || saved < links || dearest > 2 * s.tailMm + s.effortMm) return;
        compared++;
        expect(careful.totals.costMm).toBeLessThanOrEqual(never.totals.costMm);
      }),
      { numRuns: 1000 },
    );
    expect(compared).toBeGreaterThan(50);
  });
});

function withRows(design: Design, change: (row: Uint8Array) => Uint8Array): Design {
  return { ...design, layers: design.layers.map((layer) => ({ ...layer, rows: layer.rows.map(change) })) };
}
