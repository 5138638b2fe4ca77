/** The canary: a sound plan is spoilt in one place, in each way that a planner could go wrong, and must be found out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import { planFaults } from '../../shared/tying/laws/check-plan.ts';
import type { Piece, Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../notation.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 3_000 });

const letters = ['aabbaa', 'ab-aab', 'baabba', 'aaaaaa'];

/** Pieces of 6 knots, so that there are joins as well as carries and turns. */
function soundPlan(change: Partial<Plan['settings']> = {}): {
  plan: Plan;
  chart: ReturnType<typeof flatten>;
} {
  const plain = designFromLetters(letters);
  const design = { ...plain, tying: { ...plain.tying, workingLengthMm: 130 + 6.5 * 37.7, ...change } };
  const chart = flatten(design);
  const plan = planCarefully(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return { plan: structuredClone(plan.value), chart };
}

/** One spoilt place each, and a word of the sentence that must tell of it. */
const spoilt: [name: string, says: RegExp, spoil: (plan: Plan) => unknown][] = [
  ['a knot that nobody ties', /never tied/, (plan) => shorten(plan)],
  ['a knot tied twice', /tied twice/, (plan) => plan.strands.push(structuredClone(plan.strands[0]!))],
  [
    'a strand of the wrong yarn',
    /not all of it is y9/,
    (plan) => Object.assign(plan.strands[0]!, { yarn: 'y9' }),
  ],
  ['a stretch against its row', /other way/, (plan) => turnRound(plan)],
  [
    'a stretch outside the chart',
    /no such cells/,
    (plan) => Object.assign(firstPiece(plan).stretches[0]!, { row: 9 }),
  ],
  ['a piece without a knot', /ties nothing/, (plan) => plan.strands[0]!.pieces.push(emptyPiece(plan))],
  ['a strand without a piece', /no piece/, (plan) => plan.strands.push({ yarn: 'y1', pieces: [] })],
  ['strands out of order', /attached before/, (plan) => plan.strands.reverse()],
  ['stretches out of order', /earlier on the strand/, (plan) => carrying(plan).stretches.reverse()],
  [
    'a carry over too many cords',
    /over \d+ cords?/,
    (plan) => Object.assign(plan.settings, { carryMaxCords: 0 }),
  ],
  [
    'a carry over too many rows',
    /over \d+ rows?/,
    (plan) => Object.assign(plan.settings, { carryMaxRows: 0 }),
  ],
  ['a run cut in two without a join', /unfinished|within a run/, (plan) => splitStretch(plan)],
  ['a strand that ends within a run', /within a run/, (plan) => splitStrand(plan)],
  ['a join where the strand is carried', /joined where/, (plan) => cutAtCarry(plan)],
  [
    'a piece longer than the working length',
    /working length/,
    (plan) => Object.assign(plan.settings, { workingLengthMm: 375 }),
  ],
  [
    'a piece that goes into its reserve',
    /with the reserve no more/,
    (plan) => Object.assign(plan.settings, { reserveShare: 0.1 }),
  ],
  ['a piece that uses more than it is', /uses/, (plan) => Object.assign(plan.settings, { tailMm: 200 })],
  ['a knot that takes more', /knottedMm/, (plan) => Object.assign(plan.settings.knotMm, { y1: 37.8 })],
  ['a carry that is longer', /carriedMm/, (plan) => Object.assign(plan.settings, { slack: 1.2 })],
  [
    'a wrong left-over',
    /leftOverMm/,
    (plan) => Object.assign(firstPiece(plan), { leftOverMm: firstPiece(plan).leftOverMm + 0.1 }),
  ],
  [
    'a length with noise',
    /usedMm/,
    (plan) => Object.assign(firstPiece(plan), { usedMm: firstPiece(plan).usedMm + 1e-9 }),
  ],
  ['a yarn that is missing', /missing/, (plan) => delete plan.perYarn.y2],
  ['a yarn that ties nothing', /y7/, (plan) => Object.assign(plan.perYarn, { y7: plan.perYarn.y1 })],
  ['the plan of another chart', /cells/, (plan) => Object.assign(plan, { columns: plan.columns + 1 })],
  ['another start corner', /begins/, (plan) => Object.assign(plan, { startCorner: 'top-right' })],
  ['no hash', /hash/, (plan) => Object.assign(plan, { chartHash: 'none' })],
];

describe('the laws of tying', () => {
  it('hold for the plan that is going to be spoilt, which has joins, carries and turns', () => {
    const { plan, chart } = soundPlan();
    expect(planFaults(plan, chart)).toEqual([]);
    expect(Math.min(plan.totals.joins, plan.totals.carries, plan.totals.turns)).toBeGreaterThan(0);
  });

  it.each(spoilt)('find %s', (_, says, spoil) => {
    const { plan, chart } = soundPlan();
    spoil(plan);
    expect(planFaults(plan, chart).join('\n')).toMatch(says);
  });

  it('find a carry behind bare cells', () => {
    const design = designFromLetters(['a-a']);
    const chart = flatten(design);
    const planned = planStrands(design, chart);
    if (!planned.ok) throw new Error(planned.problem.sentence);
    const plan = structuredClone(planned.value);
    const [first, second] = plan.strands;
    first!.pieces[0]!.stretches.push(...second!.pieces[0]!.stretches);
    plan.strands.pop();
    expect(planFaults(plan, chart).join('\n')).toMatch('carried behind bare cord 2');
  });

  it.each(Object.keys(soundPlan().plan.totals) as (keyof Plan['totals'])[])(
    'find a wrong total of %s',
    (key) => {
      const { plan, chart } = soundPlan();
      plan.totals[key] += 0.1;
      expect(planFaults(plan, chart).join('\n')).toMatch(`in all, ${key}`);
    },
  );

  it('find any one figure of a piece or a yarn that is a tenth off, on random charts', () => {
    fc.assert(
      fc.property(arbitraryChart(), fc.nat(), fc.nat(), ({ design, chart }, whose, which) => {
        const planned = planStrands(design, chart);
        if (!planned.ok || planned.value.strands.length === 0) return;
        const plan = structuredClone(planned.value);
        const holders = [...plan.strands.flatMap(({ pieces }) => pieces), ...Object.values(plan.perYarn)];
        const holder = holders[whose % holders.length] as unknown as Record<string, unknown>;
        const figures = Object.keys(holder).filter((key) => typeof holder[key] === 'number');
        const figure = figures[which % figures.length]!;
        holder[figure] = (holder[figure] as number) + 0.1;
        expect(planFaults(plan, chart)).not.toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});

function firstPiece(plan: Plan): Piece {
  return plan.strands[0]!.pieces[0]!;
}

/** The first piece that is carried from one stretch to another. */
function carrying(plan: Plan): Piece {
  return plan.strands.flatMap(({ pieces }) => pieces).find(({ stretches }) => stretches.length > 1)!;
}

function longStretch(plan: Plan) {
  for (const { pieces } of plan.strands) {
    for (const piece of pieces) {
      const index = piece.stretches.findIndex(({ from, to }) => Math.abs(from - to) > 0);
      if (index >= 0) return { piece, index, stretch: piece.stretches[index]! };
    }
  }
  throw new Error('the plan has no stretch of two knots');
}

function shorten(plan: Plan): void {
  const { stretch } = longStretch(plan);
  stretch.to += stretch.to > stretch.from ? -1 : 1;
}

function turnRound(plan: Plan): void {
  const { stretch } = longStretch(plan);
  [stretch.from, stretch.to] = [stretch.to, stretch.from];
}

function emptyPiece(plan: Plan): Piece {
  return { ...firstPiece(plan), stretches: [], knots: 0 };
}

function splitStretch(plan: Plan): void {
  const { piece, index, stretch } = longStretch(plan);
  const middle = stretch.from + (stretch.to > stretch.from ? 1 : -1);
  piece.stretches.splice(index, 1, { ...stretch, to: stretch.from }, { ...stretch, from: middle });
}

function splitStrand(plan: Plan): void {
  const s = plan.strands.findIndex(({ pieces }) => pieces.length > 1);
  const [strand] = plan.strands.splice(s, 1);
  plan.strands.push({ ...strand!, pieces: strand!.pieces.slice(0, 1) });
  plan.strands.push({ ...strand!, pieces: strand!.pieces.slice(1) });
}

function cutAtCarry(plan: Plan): void {
  const strand = plan.strands.find(({ pieces }) => pieces.includes(carrying(plan)))!;
  const at = strand.pieces.indexOf(carrying(plan));
  const piece = strand.pieces[at]!;
  strand.pieces.splice(
    at,
    1,
    { ...piece, stretches: piece.stretches.slice(0, 1) },
    { ...piece, stretches: piece.stretches.slice(1) },
  );
}
