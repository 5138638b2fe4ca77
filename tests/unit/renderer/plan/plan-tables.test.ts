import { describe, expect, it } from 'vitest';
import { arrivals } from '../../../../renderer/plan/plans/plan-tables.ts';
import { planned } from '../../../../renderer/plan/plans/planned.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import { demoDesigns } from '../../../../shared/demos/demo-designs.ts';
import { BARE } from '../../../../shared/design/codes.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { newDesign } from '../../../../shared/design/new-design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import type { Plan } from '../../../../shared/tying/plan.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';
import { tablesOf } from './tables-of.ts';

const list = (column: ArrayLike<number>) => Array.from(column);

function planOf(design: Design, effort: 'quick' | 'full' = 'quick'): Plan {
  const plan = planStrands(design, flatten(design), { effort });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

describe('the tables of a plan', () => {
  // Row 1 ties a, b and, carried past b, a again; row 2 turns both, and begins a new a. Row 3 is bare.
  const { tables } = tablesOf(['aabba', 'aabba', '-----', 'bbbbb'], { workingLengthMm: 300 });
  const { stretches, pieces, strands } = tables;

  it('hold the stretches in the order in which they are tied, from 0', () => {
    expect(list(stretches.row)).toEqual([0, 0, 0, 1, 1, 1, 3, 3]);
    expect(list(stretches.from)).toEqual([0, 2, 4, 4, 3, 1, 4, 0]);
    expect(list(stretches.to)).toEqual([1, 3, 4, 4, 2, 0, 1, 0]);
    expect(list(tables.rowStart)).toEqual([0, 3, 6, 6, 8]);
    expect(list(stretches.knotsBefore)).toEqual([0, 2, 4, 5, 6, 8, 10, 14, 15]);
  });

  it('say how each strand gets to them, and from where', () => {
    expect(list(stretches.arrival).map((arrival) => arrivals[arrival])).toEqual([
      'attach',
      'attach',
      'carry',
      'turn',
      'turn',
      'attach',
      'attach',
      'join',
    ]);
    expect(list(stretches.before)).toEqual([-1, -1, 0, 2, 1, -1, -1, 6]);
    expect(list(stretches.after)).toEqual([2, 4, 3, -1, -1, -1, 7, -1]);
  });

  it('give a carry the length that the plan gives it, slack included', () => {
    // Three cords of 5 mm with 5 % of slack are 15.75 mm; one row of 4.8 mm is 5.04 mm; both to 0.1 mm.
    expect(list(stretches.carryMm)).toEqual([0, 0, 15.8, 5, 5, 0, 0, 0]);
  });

  it('number pieces and strands among those of their yarn, in the order of use', () => {
    expect(list(pieces.number)).toEqual([1, 1, 2, 2, 3]);
    expect(list(strands.number)).toEqual([1, 1, 2, 2]);
    expect(list(strands.firstPiece)).toEqual([0, 1, 2, 3, 5]);
    expect(list(stretches.piece)).toEqual([0, 1, 0, 0, 1, 2, 3, 4]);
  });

  it('find the stretch of every cell, and none where the cord is bare', () => {
    expect(list(tables.stretchAt)).toEqual([
      ...[0, 0, 1, 1, 2],
      ...[5, 5, 4, 4, 3],
      ...[-1, -1, -1, -1, -1],
      ...[7, 6, 6, 6, 6],
    ]);
  });

  it.each(demoDesigns.map(({ make }) => make()).map((design) => [design.title, design] as const))(
    'add up to the plan of “%s”',
    (_, design) => {
      const plan = planOf(design);
      const { tables: own, rows } = planned(design, flatten(design), { plan }).planned;
      const sum = (column: ArrayLike<number>) => list(column).reduce((total, each) => total + each, 0);
      expect(own.strands.count).toBe(plan.totals.strands);
      expect(own.pieces.count).toBe(plan.totals.pieces);
      expect(sum(own.pieces.knots)).toBe(plan.totals.knots);
      expect(sum(own.pieces.usedMm)).toBeCloseTo(plan.totals.usedMm, 3);
      expect(sum(own.stretches.carryMm)).toBeCloseTo(plan.totals.carriedMm, 3);
      expect(Math.max(...rows.map(({ live }) => live))).toBe(plan.totals.liveMax);
      expect(rows.reduce((total, { pieces: begun }) => total + begun, 0)).toBe(plan.totals.pieces);
    },
  );

  it('are empty where every cell is bare', () => {
    const design = newDesign({ title: 'Bare', columns: 3, rows: 2 });
    const rows = design.layers[0]!.rows.map((row) => row.slice().fill(BARE));
    const bare = { ...design, layers: [{ ...design.layers[0]!, rows }] };
    const { planned: shown } = planned(bare, flatten(bare), { plan: planOf(bare) });
    expect(shown.tables.strands.count).toBe(0);
    expect(list(shown.tables.stretchAt)).toEqual([-1, -1, -1, -1, -1, -1]);
    expect(shown.figures.pieces).toBe(0);
  });
});

describe('the figures of the Plan screen', () => {
  it('tell of the full plan what the wish for few live strands takes, and of a quick one nothing', () => {
    const stripes = designFromLetters(['abc', 'abc', 'abc', 'abc']);
    const design = { ...stripes, tying: { ...stripes.tying, liveWish: 2 } };
    const chart = flatten(design);
    const held = planOf(design, 'full');
    const free = planOf(stripes, 'full');
    const { wished } = planned(design, chart, { plan: held, free }).planned;
    expect(wished).toEqual({ wish: 2, plan: held.totals, free: free.totals });
    expect(planned(design, chart, { plan: planOf(design) }).planned.wished).toBeNull();
    expect(planned(stripes, chart, { plan: free, free: null }).planned.wished).toBeNull();
  });

  it.each(demoDesigns.map(({ make }) => make()).map((design) => [design.title, design] as const))(
    'are those of the materials and of the plan of “%s”, which the JSON and the pattern are made from',
    (_, design) => {
      const chart = flatten(design);
      const plan = planOf(design);
      const materials = materialsOf(design, chart, plan);
      const shown = planned(design, chart, { plan }).planned;
      expect(shown.materials).toEqual(materials);
      expect(shown.figures).toEqual({
        pieces: materials.totals.pieces,
        looseEnds: plan.totals.looseEnds,
        yarnCutMm: plan.totals.cutMm,
        carriedMm: plan.totals.carriedMm,
        liveMax: plan.totals.liveMax,
        seconds: materials.totals.seconds,
      });
    },
  );
});
