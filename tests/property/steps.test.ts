/** The steps are the plan told in another way: who does what they say ties the chart, with the plan's pieces. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chart, flatten } from '../../shared/chart/chart.ts';
import { BARE, codeOf, type YarnId } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { planCarefully } from '../../shared/tying/careful-person/plan-carefully.ts';
import { planNeverCarrying } from '../../shared/tying/careful-person/plan-never-carrying.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { writtenRows } from '../../shared/tying/rows/written-rows.ts';
import { rowTallies } from '../../shared/tying/steps/row-tallies.ts';
import type { Place, Step } from '../../shared/tying/steps/step.ts';
import { stepAt } from '../../shared/tying/steps/step-at.ts';
import { stepWords } from '../../shared/tying/steps/step-words.ts';
import { stepsOf } from '../../shared/tying/steps/steps-of.ts';
import { tyingOrder } from '../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../notation.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 7_000 });

interface Told {
  readonly design: Design;
  readonly chart: Chart;
  readonly plan: Plan;
  readonly rows: readonly (readonly Step[])[];
}

const planners = [planStrands, planCarefully, planNeverCarrying];

function forAll(claim: (told: Told) => void, numRuns = 200): void {
  fc.assert(
    fc.property(arbitraryChart(), fc.constantFrom(...planners), ({ design, chart }, planner) => {
      const plan = planner(design, chart);
      if (!plan.ok) throw new Error(plan.problem.sentence);
      claim({ design, chart, plan: plan.value, rows: stepsOf(tyingOrder(chart, plan.value)) });
    }),
    { numRuns },
  );
}

/** A piece as the maker who follows the steps has used it, in tenths of a mm. */
interface UsedPiece {
  readonly yarn: YarnId;
  readonly number: number;
  knots: number;
  carried: number;
  tails: number;
}

/**
 * A strand at the maker's hands: where its last knot is, null where it has been brought to its next one; and the knot
 * that it waits for, where it was laid down.
 */
interface HeldStrand {
  piece: UsedPiece;
  at: Place | null;
  left: Place | null;
}

/** A maker who does what the steps say and knows neither chart nor plan. */
class Follower {
  readonly cells: Uint8Array;
  readonly pieces: UsedPiece[] = [];
  readonly held = new Map<number, HeldStrand>();
  readonly #columns: number;
  #lastPosition = -1;
  #goesRight = true;
  #knots = 0;

  constructor(columns: number, rows: number) {
    this.#columns = columns;
    this.cells = new Uint8Array(columns * rows).fill(BARE);
  }

  follow(step: Step): void {
    expect(step.knotsBefore).toBe(this.#knots);
    switch (step.kind) {
      case 'row':
        this.#goesRight = step.goesRight;
        return;
      case 'attach':
        expect(this.held.has(step.strand)).toBe(false);
        this.held.set(step.strand, {
          piece: this.#cut(step.yarn, step.piece, step.tailMm),
          at: null,
          left: null,
        });
        expect(step.tailSide).toBe(this.#goesRight ? 'left' : 'right');
        return;
      case 'join': {
        const strand = this.#strand(step.strand);
        expect([strand.piece.number, strand.at]).toEqual([
          step.oldPiece,
          { row: step.row, cord: step.after },
        ]);
        expect(step.cord - step.after).toBe(this.#goesRight ? 1 : -1);
        strand.piece.tails += tenths(step.tailMm);
        strand.piece = this.#cut(step.yarn, step.piece, step.tailMm);
        strand.at = null;
        return;
      }
      case 'carry':
      case 'turn': {
        const strand = this.#strand(step.strand);
        expect(strand.at).toEqual(step.from);
        expect(strand.left).toEqual(step.inHand ? null : step.to);
        expect(step.to.row).toBe(step.row);
        strand.piece.carried += tenths(step.lengthMm);
        strand.left = null;
        strand.at = null;
        return;
      }
      case 'leave': {
        const strand = this.#strand(step.strand);
        expect(strand.at).toEqual({ row: step.row, cord: step.cord });
        strand.left = step.until;
        return;
      }
      case 'end': {
        const strand = this.#strand(step.strand);
        expect(strand.at).toEqual({ row: step.row, cord: step.cord });
        strand.piece.tails += tenths(step.tailMm);
        this.held.delete(step.strand);
        return;
      }
      case 'knots':
        this.#tie(step);
    }
  }

  #tie({ row, from, to, count, yarn, strand, piece }: Extract<Step, { kind: 'knots' }>): void {
    const held = this.#strand(strand);
    expect([held.piece.yarn, held.piece.number, held.at, held.left]).toEqual([yarn, piece, null, null]);
    const way = this.#goesRight ? 1 : -1;
    expect(to).toBe(from + way * (count - 1));
    for (let cord = from; cord !== to + way; cord += way) {
      const position = (row - 1) * this.#columns + (this.#goesRight ? cord - 1 : this.#columns - cord);
      expect(position).toBeGreaterThan(this.#lastPosition);
      this.#lastPosition = position;
      this.cells[(row - 1) * this.#columns + cord - 1] = codeOf(yarn);
    }
    held.piece.knots += count;
    held.at = { row, cord: to };
    this.#knots += count;
  }

  #strand(strand: number): HeldStrand {
    const held = this.held.get(strand);
    if (!held) throw new Error(`strand ${strand} is not at hand`);
    return held;
  }

  #cut(yarn: YarnId, number: number, tailMm: number): UsedPiece {
    const piece = { yarn, number, knots: 0, carried: 0, tails: tenths(tailMm) };
    this.pieces.push(piece);
    return piece;
  }
}

const tenths = (mm: number) => Math.round(mm * 10);

/** The plan's strands that have a knot in this row or above and one below. */
function liveAfter(plan: Plan, row: number): number {
  return plan.strands.filter(({ pieces }) => {
    const rows = pieces.flatMap(({ stretches }) => stretches.map((stretch) => stretch.row));
    return rows.some((each) => each <= row) && rows.some((each) => each > row);
  }).length;
}

describe('who follows the steps', () => {
  it('ties the chart, each knot once, in tying order and with its own yarn', () => {
    forAll(({ chart, rows }) => {
      const maker = new Follower(chart.columns, chart.rows);
      for (const step of rows.flat()) maker.follow(step);
      expect(maker.cells).toEqual(chart.cells);
      expect(maker.held.size).toBe(0);
    });
  });

  it('uses the pieces of the plan: as many knots, as much carried, the same tails', () => {
    forAll(({ chart, plan, rows }) => {
      const maker = new Follower(chart.columns, chart.rows);
      for (const step of rows.flat()) maker.follow(step);
      const used = maker.pieces.map(({ yarn, knots, carried, tails }) => {
        const knotted = knots * tenths(plan.settings.knotMm[yarn]!);
        return [yarn, knots, knotted, carried, knotted + carried + tails].join(' ');
      });
      const planned = plan.strands.flatMap(({ yarn, pieces }) =>
        pieces.map((p) =>
          [yarn, p.knots, tenths(p.knottedMm), tenths(p.carriedMm), tenths(p.usedMm)].join(' '),
        ),
      );
      expect(used.toSorted()).toEqual(planned.toSorted());
      for (const yarn of Object.keys(plan.perYarn)) {
        const numbers = maker.pieces.filter((piece) => piece.yarn === yarn).map(({ number }) => number);
        expect(numbers).toEqual(numbers.map((_, i) => i + 1));
      }
    });
  });

  it('has the strands of the plan at hand after each row', () => {
    forAll(({ chart, plan, rows }) => {
      const maker = new Follower(chart.columns, chart.rows);
      const tallies = rowTallies(tyingOrder(chart, plan));
      let most = 0;
      rows.forEach((steps, r) => {
        for (const step of steps) maker.follow(step);
        expect(maker.held.size).toBe(liveAfter(plan, r + 1));
        expect(tallies[r]!.liveAfter).toBe(maker.held.size);
        most = Math.max(most, maker.held.size);
      });
      expect(most).toBe(plan.totals.liveMax);
    });
  });
});

describe('who leaves a step out', () => {
  it('is caught at it, whichever it is', () => {
    const design = designFromLetters(['aabb', 'aabb']);
    const chart = flatten(design);
    const plan = planStrands(design, chart);
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const steps = stepsOf(tyingOrder(chart, plan.value)).flat();
    steps.forEach((left, i) => {
      // What a row's own step says is held to the written rows.
      if (left.kind === 'row') return;
      expect(() => {
        const maker = new Follower(chart.columns, chart.rows);
        for (const step of steps.toSpliced(i, 1)) maker.follow(step);
        expect([maker.cells, maker.held.size]).toEqual([chart.cells, 0]);
      }, `step ${i}`).toThrow();
    });
  });
});

describe('the steps', () => {
  it('make each loose end, carry, turn and join of the plan once, and no others', () => {
    forAll(({ chart, plan, rows }) => {
      const count = (kind: Step['kind']) => rows.flat().filter((step) => step.kind === kind).length;
      const { totals } = plan;
      expect(count('attach')).toBe(totals.strands);
      expect(count('end')).toBe(totals.strands);
      expect(count('join')).toBe(totals.joins);
      expect(count('attach') + count('end') + 2 * count('join')).toBe(totals.looseEnds);
      expect(count('carry')).toBe(totals.carries);
      expect(count('turn')).toBe(totals.turns);
      const tallies = rowTallies(tyingOrder(chart, plan));
      const sum = (of: (tally: (typeof tallies)[number]) => number) =>
        tallies.reduce((whole, tally) => whole + of(tally), 0);
      expect(sum(({ looseEnds }) => looseEnds)).toBe(totals.looseEnds);
      expect(sum(({ attached, joined }) => attached + joined)).toBe(totals.pieces);
      expect(sum(({ carries }) => carries)).toBe(totals.carries);
      expect(sum(({ turns }) => turns)).toBe(totals.turns);
      expect(sum(({ knots }) => knots)).toBe(totals.knots);
    });
  });

  it('lift the cords that the written rows lift, and go their way', () => {
    forAll(({ design, chart, rows }) => {
      const written = writtenRows(chart, new Map(design.yarns.map((yarn) => [yarn.id, yarn])));
      const begun = rows.map(([first]) => {
        if (first?.kind !== 'row') throw new Error('a row has no beginning');
        return { row: first.row, goesRight: first.goesRight, lifts: first.lifts };
      });
      expect(begun).toEqual(written.map(({ row, goesRight, lifts }) => ({ row, goesRight, lifts })));
    });
  });

  it('pass a carried strand behind as many knots as it has cords to cross, none of them bare', () => {
    forAll(({ chart, rows }) => {
      for (const step of rows.flat()) {
        if (step.kind !== 'carry') continue;
        const passed = step.behind.flatMap(({ yarn, from, to, count }) => {
          expect(count).toBe(Math.abs(to - from) + 1);
          const way = to < from ? -1 : 1;
          return Array.from({ length: count }, (_, i) => ({ yarn, cord: from + way * i }));
        });
        expect(passed).toHaveLength(step.rows === 0 ? step.cords - 1 : step.cords);
        for (const { yarn, cord } of passed) {
          expect(chart.cells[(step.row - 1) * chart.columns + cord - 1]).toBe(codeOf(yarn));
        }
      }
    });
  });

  it('are found again by the number of knots that are tied', () => {
    forAll(({ chart, plan }) => {
      const order = tyingOrder(chart, plan);
      for (let knots = 0; knots < plan.totals.knots; knots++) {
        const { step, done } = stepAt(order, knots)!;
        expect(step.knotsBefore + done).toBe(knots);
        expect(done).toBeLessThan(step.count);
        expect(stepsOf(order)[step.row - 1]![step.index]).toEqual(step);
      }
      expect(stepAt(order, plan.totals.knots)).toBeNull();
    }, 30);
  });

  it('can all be said, in both forms, naming their yarn', () => {
    forAll(({ design, rows }) => {
      const yarnsById = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
      for (const step of rows.flat()) {
        for (const form of ['compact', 'long'] as const) {
          const words = stepWords(step, { yarnsById, units: 'both', form });
          expect(words).not.toMatch(/undefined|NaN|object| {2}/);
          if (step.kind !== 'row') expect(words).toContain(yarnsById.get(step.yarn)!.name);
        }
      }
    }, 100);
  });
});
