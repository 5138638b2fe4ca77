import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chart, flatten } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { carefulPerson } from '../../shared/tying/careful-person/careful-person.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import { planNeverCarrying } from '../../shared/tying/careful-person/plan-never-carrying.ts';
import { pathCover } from '../../shared/tying/cover/path-cover.ts';
import { weighLinks } from '../../shared/tying/cover/weighed-links.ts';
import { planFaults } from '../../shared/tying/laws/check-plan.ts';
import { bestPieces } from '../../shared/tying/pieces/best-pieces.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../shared/tying/plan-wishes.ts';
import { carryLength } from '../../shared/tying/question/carry.ts';
import { Links } from '../../shared/tying/question/links.ts';
import { planQuestion } from '../../shared/tying/question/plan-question.ts';
import type { PlanQuestion } from '../../shared/tying/question/strand-choice.ts';
import { knotsOf } from '../../shared/tying/runs.ts';
import { arbitraryChart, type ChartCase } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 6_000 });

describe('the full plan', () => {
  it('keeps every law of tying', () => {
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        expect(planFaults(planned(design, chart), chart)).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it('costs no more than the exact cover with its best pieces, a careful person, or one who never carries', () => {
    let better = 0;
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        const full = planned(design, chart).totals.costMm;
        const others = [
          planStrands(design, chart, { effort: 'quick' }),
          planCarefully(design, chart),
          planNeverCarrying(design, chart),
        ].map((plan) => (plan.ok ? plan.value.totals.costMm : Number.NaN));
        for (const other of others) expect(full).toBeLessThanOrEqual(other);
        if (others.every((other) => full < other)) better++;
      }),
      { numRuns: 500 },
    );
    expect(better).toBeGreaterThan(10);
  });

  it('is the same bytes each time', () => {
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        expect(JSON.stringify(planned(design, chart))).toBe(JSON.stringify(planned(design, chart)));
      }),
      { numRuns: 100 },
    );
  });
});

describe('the plan with a wish for few live strands', () => {
  it('keeps the wish, and every law of tying', () => {
    let held = 0;
    fc.assert(
      fc.property(chartWithCarries(), fc.nat(3), ({ design, chart }, liveWish) => {
        const plan = planned(design, chart, { liveWish });
        expect(planFaults(plan, chart)).toEqual([]);
        expect(plan.totals.liveMax).toBeLessThanOrEqual(liveWish);
        if (planned(design, chart).totals.liveMax > liveWish) held++;
      }),
      { numRuns: 500 },
    );
    expect(held).toBeGreaterThan(60);
  });
});

describe('the exact cover with its best pieces', () => {
  it('keeps every law of tying', () => {
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        const plan = planStrands(design, chart, { effort: 'quick' });
        expect(plan.ok && planFaults(plan.value, chart)).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it('has the pieces that are found when every knot is looked at', () => {
    let cut = 0;
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        const question = asked(design, chart);
        for (const { previous } of [cover(question), carefulPerson(question)]) {
          const pieced = bestPieces(question, previous);
          const cost = pieced.costs.reduce((sum, each) => sum + each, 0);
          expect(cost).toBe(costKnotByKnot(question, previous));
          if (pieced.previous.some((before, run) => before !== previous[run])) cut++;
        }
      }),
      { numRuns: 500 },
    );
    expect(cut).toBeGreaterThan(50);
  });
});

describe('the exact cover', () => {
  it('costs the same for a mirrored chart with the other start corner', () => {
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        const startCorner = design.startCorner === 'top-left' ? 'top-right' : 'top-left';
        const mirrored = withRows({ ...design, startCorner }, (rows) => rows.map((row) => row.toReversed()));
        expect(coverCost(asked(mirrored, flatten(mirrored)))).toBe(coverCost(asked(design, chart)));
      }),
      { numRuns: 500 },
    );
  });

  it('costs the same for a chart without bare cells that is turned by 180 degrees', () => {
    fc.assert(
      fc.property(chartWithCarries(), ({ design }) => {
        // A carry may not pass bare cells of the row that it arrives in, which the turn makes the row it leaves.
        const full = withRows(design, (rows) =>
          rows.map((row) => row.map((code) => (code === BARE ? 1 : code))),
        );
        const other = (corner: Design['startCorner']) => (corner === 'top-left' ? 'top-right' : 'top-left');
        const startCorner = full.rows % 2 === 0 ? other(full.startCorner) : full.startCorner;
        const turned = withRows({ ...full, startCorner }, (rows) =>
          rows.toReversed().map((row) => row.toReversed()),
        );
        expect(coverCost(asked(turned, flatten(turned)))).toBe(coverCost(asked(full, flatten(full))));
      }),
      { numRuns: 500 },
    );
  });

  it('costs the same for a recoloured chart', () => {
    fc.assert(
      fc.property(chartWithCarries(), ({ design, chart }) => {
        const alike = { ...design, yarns: design.yarns.map((yarn) => ({ ...yarn, diameterMm: 1 })) };
        const count = design.yarns.length;
        const recoloured = withRows(alike, (rows) =>
          rows.map((row) => row.map((code) => (code === BARE ? BARE : count + 1 - code))),
        );
        expect(coverCost(asked(recoloured, flatten(recoloured)))).toBe(coverCost(asked(alike, chart)));
      }),
      { numRuns: 300 },
    );
  });

  it('never costs more when a limit is widened', () => {
    fc.assert(
      fc.property(chartWithCarries(), fc.nat(4), fc.nat(4), ({ design, chart }, cords, rows) => {
        const { carryMaxCords, carryMaxRows } = design.tying;
        const tying = {
          ...design.tying,
          carryMaxCords: carryMaxCords + cords,
          carryMaxRows: carryMaxRows + rows,
        };
        expect(coverCost(asked({ ...design, tying }, chart))).toBeLessThanOrEqual(
          coverCost(asked(design, chart)),
        );
      }),
      { numRuns: 500 },
    );
  });
});

/** Half of them with settings by which carries pay, and pieces of a few knots. */
function chartWithCarries(): fc.Arbitrary<ChartCase> {
  const carrying = fc.record({
    effortMm: fc.constant(200),
    carryMaxCords: fc.integer({ min: 1, max: 8 }),
    carryMaxRows: fc.integer({ min: 1, max: 6 }),
  });
  return fc
    .tuple(arbitraryChart({ maxColumns: 16, maxRows: 12 }), fc.option(carrying))
    .map(([{ design, chart }, tying]) => ({
      design: { ...design, tying: { ...design.tying, ...tying } },
      chart,
    }));
}

function planned(design: Design, chart: Chart, wishes?: PlanWishes): Plan {
  const plan = planStrands(design, chart, wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

function asked(design: Design, chart: Chart): PlanQuestion {
  const question = planQuestion(design, chart);
  if (!question.ok) throw new Error(question.problem.sentence);
  return question.value;
}

function cover(question: PlanQuestion): { previous: Int32Array } {
  return pathCover(question, weighLinks(question, new Links(question)));
}

function linkCost(question: PlanQuestion, from: number, to: number): number {
  const { runs, tenths } = question;
  return carryLength(question, from, to) + tenths.rowPrice * (runs.row[to]! - runs.row[from]!);
}

/** In tenths of a mm. */
function coverCost(question: PlanQuestion): number {
  let cost = 0;
  cover(question).previous.forEach((before, run) => {
    cost += before === -1 ? question.tenths.attach : linkCost(question, before, run);
  });
  return cost;
}

/**
 * The cheapest pieces of given strands, the plain way: for each knot of a strand, the least that it costs to end a
 * piece there, over all knots where that piece may have begun.
 */
function costKnotByKnot(question: PlanQuestion, previous: Int32Array): number {
  const { runs, tenths } = question;
  let total = 0;
  for (let first = 0; first < runs.count; first++) {
    if (previous[first] !== -1) continue;
    /** What lies before each knot of the strand: nothing, or a carry with its cost. */
    const knots: { carry: number; cost: number }[] = [];
    for (let run = first; run !== -1; run = previous.indexOf(run)) {
      const before = previous[run]!;
      knots.push(
        before === -1
          ? { carry: 0, cost: 0 }
          : { carry: carryLength(question, before, run), cost: linkCost(question, before, run) },
      );
      for (let k = 1; k < knotsOf(runs, run); k++) knots.push({ carry: 0, cost: 0 });
    }
    const knot = tenths.knot[runs.yarn[first]!]!;
    const least = [0];
    for (let end = 1; end <= knots.length; end++) {
      let best = Number.POSITIVE_INFINITY;
      let length = 0;
      let cost = tenths.attach;
      for (let begin = end - 1; begin >= 0; begin--) {
        length += knot;
        if (length > tenths.room) break;
        best = Math.min(best, least[begin]! + cost);
        length += knots[begin]!.carry;
        cost += knots[begin]!.cost;
      }
      least.push(best);
    }
    total += least[knots.length]!;
  }
  return total;
}

function withRows(design: Design, change: (rows: readonly Uint8Array[]) => Uint8Array[]): Design {
  return { ...design, layers: design.layers.map((layer) => ({ ...layer, rows: change(layer.rows) })) };
}
