import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import type { Pin } from '../../shared/design/schema.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import { pathCover } from '../../shared/tying/cover/path-cover.ts';
import { weighLinks } from '../../shared/tying/cover/weighed-links.ts';
import { planFaults } from '../../shared/tying/laws/check-plan.ts';
import { bestPieces } from '../../shared/tying/pieces/best-pieces.ts';
import { pinFaults } from '../../shared/tying/pins/pin-faults.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { PlanWishes } from '../../shared/tying/plan-wishes.ts';
import { planQuickly } from '../../shared/tying/planners/plan-quickly.ts';
import { carryLength } from '../../shared/tying/question/carry.ts';
import { Links } from '../../shared/tying/question/links.ts';
import type { PlanQuestion } from '../../shared/tying/question/strand-choice.ts';
import { wishedQuestion } from '../../shared/tying/question/wished-question.ts';
import { KeptStrands } from '../../shared/tying/repair/kept-strands.ts';
import { knotsOf } from '../../shared/tying/runs.ts';
import { arbitraryChart, type ChartCase } from './arbitrary-chart.ts';
import { arbitraryPins, pinsOf } from './arbitrary-pins.ts';

fc.configureGlobal({ seed: 8_000 });

/** Charts that are not tiny, half of them with settings by which carries pay. */
const pinned = fc
  .tuple(
    arbitraryChart({ maxColumns: 14, maxRows: 10 }).filter(({ chart }) => chart.cells.length >= 30),
    fc.boolean(),
  )
  .map(
    ([{ design, chart }, pays]): ChartCase => ({
      design: pays ? { ...design, tying: { ...design.tying, ...carrying } } : design,
      chart,
    }),
  )
  .chain((each) => fc.record({ ...constants(each), pins: arbitraryPins(each.chart) }));

const carrying = { effortMm: 200, carryMaxCords: 6, carryMaxRows: 4 };

describe('a plan with pins', () => {
  it.each<[string, PlanWishes]>([
    ['quick', { effort: 'quick' }],
    ['full', {}],
    ['with a wish for few live strands', { liveWish: 2 }],
  ])('obeys each that it does not report, and keeps every law of tying (%s)', (_, wishes) => {
    const obeyed = { cut: 0, 'no-carry': 0, carry: 0 };
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        const plan = planned({ ...design, pins }, chart, wishes);
        expect(planFaults(plan, chart)).toEqual([]);
        const faults = pinFaults({ ...design, pins }, chart, wishes).map(({ pin }) => pin);
        expect(pins.filter((pin) => !faults.includes(pin))).toEqual(plan.pins);
        for (const { kind } of plan.pins) obeyed[kind]++;
        if (wishes.liveWish) expect(plan.totals.liveMax).toBeLessThanOrEqual(wishes.liveWish);
      }),
      { numRuns: 1000 },
    );
    for (const count of Object.values(obeyed)) expect(count).toBeGreaterThan(100);
  });

  it('obeys all at once that some plan obeys', () => {
    let carries = 0;
    fc.assert(
      fc.property(pinned, fc.infiniteStream(fc.nat(2)), ({ design, chart }, chance) => {
        const careful = planCarefully(design, chart);
        if (!careful.ok) throw new Error(careful.problem.sentence);
        const some = pinsOf(careful.value).filter(() => chance.next().value === 0);
        for (const pins of [pinsOf(careful.value).slice(0, limits.pins), some]) {
          expect(pinFaults({ ...design, pins }, chart)).toEqual([]);
          for (const effort of ['quick', 'full'] as const) {
            const plan = planned({ ...design, pins }, chart, { effort });
            expect(planFaults(plan, chart)).toEqual([]);
            expect(plan.pins).toEqual(pins);
          }
          carries += pins.filter(({ kind }) => kind === 'carry').length;
        }
      }),
      { numRuns: 200 },
    );
    expect(carries).toBeGreaterThan(500);
  });

  it('is the plan without pins, to the byte, where none is obeyed, and once they are removed', () => {
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        const beyond: Pin[] = [{ kind: 'cut', row: chart.rows + 1, cord: 1 }];
        const plain = JSON.stringify(planned(design, chart));
        expect(JSON.stringify(planned({ ...design, pins: beyond }, chart))).toBe(plain);
        planned({ ...design, pins }, chart);
        expect(JSON.stringify(planned({ ...design, pins: [] }, chart))).toBe(plain);
      }),
      { numRuns: 100 },
    );
  });

  it('leaves the strands of other yarns as they were, where a pin cuts or carries', () => {
    let changed = 0;
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        const own = pins.filter(({ kind }) => kind !== 'no-carry');
        const touched = new Set(
          own.map(({ row, cord }) => chart.cells[(row - 1) * chart.columns + cord - 1]),
        );
        for (const effort of ['quick', 'full'] as const) {
          const before = planned(design, chart, { effort });
          const after = planned({ ...design, pins: own }, chart, { effort });
          const others = ({ strands }: Plan) =>
            strands.filter(({ yarn }) => !touched.has(Number(yarn.slice(1))));
          expect(others(after)).toEqual(others(before));
          if (JSON.stringify(after.strands) !== JSON.stringify(before.strands)) changed++;
        }
      }),
      { numRuns: 200 },
    );
    expect(changed).toBeGreaterThan(50);
  });

  it('is the same bytes each time', () => {
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        const text = () => JSON.stringify(planned({ ...design, pins }, chart));
        expect(text()).toBe(text());
      }),
      { numRuns: 50 },
    );
  });

  it('goes on from tied rows, and obeys the pins below them', () => {
    let obeyed = 0;
    fc.assert(
      fc.property(pinned, fc.nat(), fc.boolean(), ({ design, chart, pins }, at, isHeld) => {
        const rows = at % (chart.rows + 1);
        const tied = { plan: planned(design, chart), rows };
        const wishes: PlanWishes = isHeld ? { tied, liveWish: 2 } : { tied };
        const plan = planned({ ...design, pins }, chart, wishes);
        expect(planFaults(plan, chart)).toEqual([]);
        const faults = pinFaults({ ...design, pins }, chart, wishes).map(({ pin }) => pin);
        expect(pins.filter((pin) => !faults.includes(pin))).toEqual(plan.pins);
        obeyed += plan.pins.length;
      }),
      { numRuns: 300 },
    );
    expect(obeyed).toBeGreaterThan(300);
  });
});

describe('the exact cover with pins', () => {
  it('never costs less than without, nor less with one pin more', () => {
    let dearer = 0;
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        let before = coverCost(asked(design, chart));
        for (let count = 1; count <= pins.length; count++) {
          const now = coverCost(asked({ ...design, pins: pins.slice(0, count) }, chart));
          expect(now).toBeGreaterThanOrEqual(before);
          if (now > before) dearer++;
          before = now;
        }
      }),
      { numRuns: 500 },
    );
    expect(dearer).toBeGreaterThan(100);
  });

  it('has the pieces that are found when every knot is looked at and no pinned carry is cut', () => {
    let joined = 0;
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        const question = asked({ ...design, pins }, chart);
        const { previous } = cover(question);
        const pieced = bestPieces(question, previous);
        const cost = pieced.costs.reduce((sum, each) => sum + each, 0);
        expect(cost).toBe(costKnotByKnot(question, previous));
        const { pinned: _, ...unpinned } = question;
        const plain = bestPieces(unpinned, previous).costs;
        if (cost > plain.reduce((sum, each) => sum + each, 0)) joined++;
      }),
      { numRuns: 1000 },
    );
    expect(joined).toBeGreaterThan(50);
  });
});

describe('a plan with pins that is repaired after each change', () => {
  const change = fc.record({ at: fc.nat(), count: fc.constantFrom(1, 1, 1, 9), yarn: fc.nat() });

  it('is the plan made anew, strand by strand and piece by piece', () => {
    let obeyed = 0;
    fc.assert(
      fc.property(pinned, fc.array(change, { minLength: 1, maxLength: 12 }), (first, changes) => {
        const { design, pins } = first;
        let { chart } = first;
        const kept = new KeptStrands();
        kept.choose(asked({ ...design, pins }, chart));
        for (const { at, count, yarn } of changes) {
          const cells = chart.cells.slice();
          cells.fill(
            yarn % (design.yarns.length + 1) || BARE,
            at % cells.length,
            (at % cells.length) + count,
          );
          chart = { ...chart, cells };
          const question = asked({ ...design, pins }, chart);
          const repaired = kept.choose(question);
          const anew = planQuickly(question);
          expect(Array.from(repaired.previous)).toEqual(Array.from(anew.previous));
          expect(repaired.joins).toEqual(anew.joins);
          obeyed += question.pinned?.obeyed.length ?? 0;
        }
      }),
      { numRuns: 1000 },
    );
    expect(obeyed).toBeGreaterThan(5000);
  });

  it('is made anew where a pin comes or goes', () => {
    fc.assert(
      fc.property(pinned, ({ design, chart, pins }) => {
        const kept = new KeptStrands();
        for (const each of [[], pins, pins.slice(1), pins, []]) {
          const question = asked({ ...design, pins: each }, chart);
          const choice = kept.choose(question);
          const anew = planQuickly(question);
          expect(Array.from(choice.previous)).toEqual(Array.from(anew.previous));
          expect(choice.joins).toEqual(anew.joins);
        }
      }),
      { numRuns: 300 },
    );
  });
});

function constants({ design, chart }: ChartCase) {
  return { design: fc.constant(design), chart: fc.constant(chart) };
}

function planned(design: Design, chart: Chart, wishes?: PlanWishes): Plan {
  const plan = planStrands(design, chart, wishes);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

function asked(design: Design, chart: Chart): PlanQuestion {
  const question = wishedQuestion(design, chart);
  if (!question.ok) throw new Error(question.problem.sentence);
  return question.value.question;
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

/** The least that it costs to end a piece at each knot of a strand, over all knots where that piece may have begun. */
function costKnotByKnot(question: PlanQuestion, previous: Int32Array): number {
  const { runs, tenths, pinned: pins } = question;
  let total = 0;
  for (let first = 0; first < runs.count; first++) {
    if (previous[first] !== -1) continue;
    /** What lies before each knot: nothing, or a carry with its cost; and whether it may be cut there. */
    const knots: { carry: number; cost: number; isHeld: boolean }[] = [];
    for (let run = first; run !== -1; run = previous.indexOf(run)) {
      const before = previous[run]!;
      const isHeld = before !== -1 && pins?.before[run] === before;
      const carry = before === -1 ? 0 : carryLength(question, before, run);
      knots.push({ carry, cost: before === -1 ? 0 : linkCost(question, before, run), isHeld });
      for (let k = 1; k < knotsOf(runs, run); k++) knots.push({ carry: 0, cost: 0, isHeld: false });
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
        if (!knots[begin]!.isHeld) best = Math.min(best, least[begin]! + cost);
        length += knots[begin]!.carry;
        cost += knots[begin]!.cost;
      }
      least.push(best);
    }
    total += least[knots.length]!;
  }
  return total;
}
