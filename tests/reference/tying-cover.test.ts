/**
 * The path cover against solvers from outside: HiGHS 1.15 (a linear program of the whole question) and a
 * Jonker-Volgenant assignment (npm `linear-sum-assignment`); and against trying everything.
 */
import fc from 'fast-check';
import highsLoader from 'highs';
import { linearSumAssignment } from 'linear-sum-assignment';
import { beforeAll, describe, expect, it } from 'vitest';
import { pathCover } from '../../shared/tying/cover/path-cover.ts';
import { weighLinks } from '../../shared/tying/cover/weighed-links.ts';
import { Links } from '../../shared/tying/question/links.ts';
import { planQuestion } from '../../shared/tying/question/plan-question.ts';
import type { PlanQuestion } from '../../shared/tying/question/strand-choice.ts';
import { type ArbitraryChart, arbitraryChart } from '../property/arbitrary-chart.ts';
import { coverProgram, type PlainLink, plainLinks } from './plain-links.ts';

let highs: Awaited<ReturnType<typeof highsLoader>>;

beforeAll(async () => {
  highs = await highsLoader();
});

describe('the cheapest path cover', () => {
  it('costs what HiGHS finds, on 400 charts', () => {
    let linked = 0;
    for (const question of questions(400, 41)) {
      if (question.runs.count === 0) continue;
      const { ObjectiveValue, Status } = highs.solve(coverProgram(question));
      expect(Status).toBe('Optimal');
      const { cost, links } = covered(question);
      expect(cost).toBeCloseTo(ObjectiveValue, 3);
      linked += links;
    }
    expect(linked).toBeGreaterThan(1000);
  });

  it('costs what an assignment of runs to places finds, on 400 charts', () => {
    for (const question of questions(400, 42, { maxColumns: 20, maxRows: 16, maxYarns: 3 })) {
      if (question.runs.count === 0) continue;
      expect(covered(question).cost).toBe(assigned(question));
    }
  });

  it('costs as little as can be, when everything is tried, on 400 small charts', () => {
    let tried = 0;
    for (const question of questions(1600, 43, { maxColumns: 5, maxRows: 4, maxYarns: 2 })) {
      const links = plainLinks(question);
      if (links.length === 0 || links.length > 16) continue;
      tried++;
      expect(covered(question).cost).toBe(cheapestOfAll(question, links));
    }
    expect(tried).toBeGreaterThan(400);
  });
});

const carrying = { effortMm: 200, carryMaxCords: 6, carryMaxRows: 4, workingLengthMm: 1524 };

function questions(count: number, seed: number, shape?: ArbitraryChart): PlanQuestion[] {
  return fc.sample(arbitraryChart(shape), { numRuns: count, seed }).map(({ design, chart }, i) => {
    // Half of them as they come, half with carries that pay.
    const tying = i % 2 === 0 ? design.tying : { ...design.tying, ...carrying };
    const question = planQuestion({ ...design, tying }, chart);
    if (!question.ok) throw new Error(question.problem.sentence);
    return question.value;
  });
}

/** What the planner's cover costs, with prices that were computed here, in tenths of a mm. */
function covered(question: PlanQuestion): { cost: number; links: number } {
  const { previous } = pathCover(question, weighLinks(question, new Links(question)));
  const prices = new Map(plainLinks(question).map(({ from, to, cost }) => [`${from} ${to}`, cost]));
  let cost = 0;
  let links = 0;
  previous.forEach((before, run) => {
    if (before !== -1) links++;
    cost += before === -1 ? question.tenths.attach : prices.get(`${before} ${run}`)!;
  });
  expect(new Set(previous.filter((before) => before !== -1)).size).toBe(links);
  return { cost, links };
}

/** Each run takes a place after another run, or one of its own; other pairs are too dear to be taken. */
function assigned(question: PlanQuestion): number {
  const { runs, tenths } = question;
  const matrix = Array.from({ length: runs.count }, (_, run) => {
    const row = new Float64Array(2 * runs.count).fill(1e9);
    row[runs.count + run] = tenths.attach;
    return row;
  });
  for (const { from, to, cost } of plainLinks(question)) matrix[to]![from] = cost;
  const { rowAssignments } = linearSumAssignment(matrix, { maximaze: false });
  return rowAssignments.reduce((sum, place, run) => sum + matrix[run]![place]!, 0);
}

function cheapestOfAll({ runs, tenths }: PlanQuestion, links: readonly PlainLink[]): number {
  const taken = new Set<number>();
  const best = (run: number): number => {
    if (run === runs.count) return 0;
    let least = tenths.attach + best(run + 1);
    for (const { from, to, cost } of links) {
      if (to !== run || taken.has(from)) continue;
      taken.add(from);
      least = Math.min(least, cost + best(run + 1));
      taken.delete(from);
    }
    return least;
  };
  return best(0);
}
