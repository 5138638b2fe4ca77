import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { chartHash, chartJson } from '../../../../shared/chart/chart-json.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { planCarefully } from '../../../../shared/tying/careful-person/plan-carefully.ts';
import { planNeverCarrying } from '../../../../shared/tying/careful-person/plan-never-carrying.ts';
import type { Plan } from '../../../../shared/tying/plan.ts';
import { designFromLetters } from '../../../notation.ts';

/** One knot of a new design's yarn: 2 sqrt((pi 5)^2 + 2.4^2) + 5 mm, to the tenth. Derived. */
const knotMm = 36.8;

function planOf(letters: string[], change: Partial<Design['tying']> = {}, planner = planCarefully): Plan {
  const plain = designFromLetters(letters);
  const design = { ...plain, tying: { ...plain.tying, ...change } };
  const plan = planner(design, flatten(design));
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

/** Strands as text: 'y1 r1 1-2, r1 4-5 | r2 5-3': stretches by commas, pieces by bars. */
function told(letters: string[], change: Partial<Design['tying']> = {}): string[] {
  return planOf(letters, change).strands.map(
    ({ yarn, pieces }) =>
      `${yarn} ${pieces
        .map(({ stretches }) => stretches.map(({ row, from, to }) => `r${row} ${from}-${to}`).join(', '))
        .join(' | ')}`,
  );
}

/** A working length that holds so many knots and two tails. */
const holding = (knots: number) => ({ workingLengthMm: 130 + knots * knotMm });

describe('the careful person', () => {
  it('carries a yarn past a few knots of another', () => {
    expect(told(['aabaa'])).toEqual(['y1 r1 1-2, r1 4-5', 'y2 r1 3-3']);
  });

  it('turns at the edge', () => {
    const { totals, strands } = planOf(['aaa', 'aaa']);
    expect(strands[0]!.pieces[0]!.stretches).toEqual([
      { row: 1, from: 1, to: 3 },
      { row: 2, from: 3, to: 1 },
    ]);
    // The turn is a row's height, 4.8 mm, with 1.05 for slack.
    expect(totals).toMatchObject({ turns: 1, carries: 0, carriedMm: 5, liveMax: 1, liveMean: 1 });
  });

  it('takes the nearest of several parked strands', () => {
    // In row 2 the left strand of y1 hangs at cord 2, the right one at cord 12.
    const rows = ['aabbbbbbbbba', 'bbbbbbbbbbab'];
    expect(told(rows)[0]).toBe('y1 r1 1-2');
    expect(told(rows)[2]).toBe('y1 r1 12-12, r2 11-11');
  });

  it('takes the one parked last where two are equally near', () => {
    const rows = ['abbbab', 'bbabbb'];
    const few = { carryMaxCords: 3 };
    expect(told(rows, few)).toContain('y1 r1 5-5, r2 3-3');
    expect(told(rows, few)).toContain('y1 r1 1-1');
  });

  it('carries as far as the limits say and no further', () => {
    const across = 'abbba';
    expect(planOf([across], { carryMaxCords: 4 }).totals.carries).toBe(1);
    expect(planOf([across], { carryMaxCords: 3 }).totals.carries).toBe(0);
    const down = ['ab', 'bb', 'ab'];
    expect(told(down, { carryMaxRows: 2 })).toContain('y1 r1 1-1, r3 1-1');
    expect(told(down, { carryMaxRows: 1 })).toContain('y1 r3 1-1');
  });

  it('carries nothing where the maker wants no carries, not even a turn', () => {
    const { totals } = planOf(['aba', 'aaa'], { carryMaxCords: 0, carryMaxRows: 0 });
    expect(totals).toMatchObject({ strands: 4, carries: 0, turns: 0, carriedMm: 0 });
    expect(planOf(['aaa', 'aaa'], { carryMaxCords: 0, carryMaxRows: 1 }).totals.turns).toBe(1);
  });

  it('never carries behind bare cells of the row it arrives in', () => {
    expect(planOf(['a-a']).totals.strands).toBe(2);
    // Down at cord 3, where row 2 is bare, and then behind it to cord 2.
    expect(planOf(['aab', 'aa-'], { carryMaxRows: 6 }).totals.strands).toBe(2);
    expect(planOf(['baa', '-aa', '-aa']).totals.strands).toBe(2);
    expect(planOf(['aaa', 'aa-']).totals.strands).toBe(2);
  });

  it('may pass bare cells of the rows above', () => {
    expect(told(['aaa', '---', 'aaa'], { carryMaxCords: 2 })).toEqual(['y1 r1 1-3, r3 1-3']);
  });

  it('uses a piece until it runs out, and joins between two knots', () => {
    expect(told(['aaaaaaa'], holding(3))).toEqual(['y1 r1 1-3 | r1 4-6 | r1 7-7']);
    expect(planOf(['aaaaaa'], holding(3)).totals).toMatchObject({
      strands: 1,
      pieces: 2,
      joins: 1,
      looseEnds: 4,
    });
  });

  it('leaves a strand where its piece no longer holds the carry and one knot', () => {
    // 10.5 mm are the carry over two cords.
    const two = 130 + 2 * knotMm;
    expect(told(['aba'], { workingLengthMm: two + 10.5 })[0]).toBe('y1 r1 1-1, r1 3-3');
    expect(told(['aba'], { workingLengthMm: two + 10.4 })[0]).toBe('y1 r1 1-1');
  });

  it('begins a run on what is left and joins within it', () => {
    expect(told(['abaaa'], { workingLengthMm: 130 + 3 * knotMm + 10.5 })[0]).toBe(
      'y1 r1 1-1, r1 3-4 | r1 5-5',
    );
  });
});

describe('the figures of a plan', () => {
  it('tell what a piece knots, carries, uses and leaves', () => {
    expect(planOf(['aabaa']).strands[0]!.pieces[0]).toEqual({
      stretches: [
        { row: 1, from: 1, to: 2 },
        { row: 1, from: 4, to: 5 },
      ],
      knots: 4,
      knottedMm: 147.2,
      carriedMm: 10.5,
      usedMm: 287.7,
      cutMm: 1524,
      leftOverMm: 1236.3,
    });
  });

  it('add up to totals and to what each yarn takes', () => {
    const { totals, perYarn } = planOf(['aabaa', 'aaaab']);
    // Strands: y1 over both rows, with a carry of two cords in row 1 and one of a cord and a row to row 2; the y2 of
    // row 1 reaches cord 5 of row 2 over two cords and a row.
    expect(totals).toEqual({
      knots: 10,
      strands: 2,
      pieces: 2,
      joins: 0,
      looseEnds: 4,
      carries: 3,
      turns: 0,
      carriedMm: 36.3,
      usedMm: 664.3,
      cutMm: 3048,
      liveMax: 2,
      liveMean: 2,
      costMm: 2 * 330 + 36.3 + 2 * 15,
    });
    expect(perYarn).toEqual({
      y1: {
        knots: 8,
        strands: 1,
        pieces: 1,
        knottedMm: 294.4,
        carriedMm: 20.8,
        tailsMm: 130,
        usedMm: 445.2,
        cutMm: 1524,
        leftOverMm: 1078.8,
      },
      y2: {
        knots: 2,
        strands: 1,
        pieces: 1,
        knottedMm: 73.6,
        carriedMm: 15.5,
        tailsMm: 130,
        usedMm: 219.1,
        cutMm: 1524,
        leftOverMm: 1304.9,
      },
    });
  });

  it('count a strand as hanging at every row that it is carried past', () => {
    const { totals } = planOf(['ab', 'bb', 'bb', 'ab']);
    expect(totals.liveMax).toBe(2);
    expect(totals.liveMean).toBe(2);
    expect(planOf(['aab']).totals).toMatchObject({ liveMax: 0, liveMean: 0 });
  });

  it('name only yarns that tie, and the chart they belong to', () => {
    const design = designFromLetters(['bb-']);
    const plan = planOf(['bb-']);
    expect(Object.keys(plan.perYarn)).toEqual(['y2']);
    expect(plan.settings.knotMm).toEqual({ y2: knotMm });
    expect(plan.chartHash).toBe(chartHash(chartJson(design, flatten(design))));
  });

  it('are all nothing where everything is bare', () => {
    const { strands, totals, perYarn } = planOf(['---', '---']);
    expect([strands, perYarn]).toEqual([[], {}]);
    expect(Object.values(totals).every((figure) => figure === 0)).toBe(true);
  });
});

describe('someone who never carries', () => {
  it('takes a fresh piece for each run, and joins where one runs out', () => {
    const { totals } = planOf(['aabaa', 'aaaaa'], holding(3), planNeverCarrying);
    expect(totals).toMatchObject({ strands: 4, pieces: 5, joins: 1, carries: 0, turns: 0, liveMax: 0 });
  });

  it('may cost less than the careful person, where a carry saves no piece', () => {
    // Two runs of two knots at three knots a piece: the carry costs 10.5 mm, and a join is still needed.
    const settings = { workingLengthMm: 130 + 3 * knotMm + 10.5 };
    const careful = planOf(['aabaaa'], settings);
    const never = planOf(['aabaaa'], settings, planNeverCarrying);
    expect(careful.totals.pieces).toBe(never.totals.pieces);
    expect(careful.totals.costMm - never.totals.costMm).toBeCloseTo(10.5, 9);
  });
});

describe('a piece too short for one knot', () => {
  it('is refused with what to do about it', () => {
    const design = designFromLetters(['aab']);
    const short = { ...design, tying: { ...design.tying, workingLengthMm: 166.7 } };
    expect(planCarefully(short, flatten(short))).toEqual({
      ok: false,
      problem: {
        code: 'piece-too-short',
        sentence:
          "A piece of 16.7 cm can't hold one knot of 3.7 cm between two tails of 6.5 cm. " +
          'Make the working length at least 17 cm, or the tails shorter.',
      },
    });
    const enough = { ...design, tying: { ...design.tying, workingLengthMm: 166.8 } };
    expect(planCarefully(enough, flatten(enough)).ok).toBe(true);
  });

  it('matters only for yarns that tie', () => {
    const design = designFromLetters(['aab']);
    const thick = design.yarns.map((yarn) => (yarn.id === 'y6' ? { ...yarn, diameterMm: 500 } : yarn));
    expect(planCarefully({ ...design, yarns: thick }, flatten(design)).ok).toBe(true);
  });
});
