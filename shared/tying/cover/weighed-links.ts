/**
 * Links with weights of which no two sets are equally heavy, so that the lightest path cover is one and only one,
 * however it is found: planned anew, or repaired from another plan.
 *
 * A weight is the cost in tenths times a power of two, plus a scatter that is a function of where the link leads from
 * and to. All scatters of a chart together stay below one tenth, so the lightest cover is also a cheapest. Weights,
 * and sums of two of them, stay below 2^53 and are exact. (That two covers of equal cost scatter alike is possible
 * but unlikely; then both are cheapest all the same.)
 */
import type { Links } from '../question/links.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';

export interface WeighedLinks {
  /** What beginning a strand weighs. */
  readonly fresh: number;
  /** Where the links to `run` begin in `from` and `weight`; both may be other arrays after this call. */
  before(run: number): number;
  count(run: number): number;
  from(): Int32Array;
  weight(): Float64Array;
  /** Calls `visit` for each run that may come right after `run`, with the link's weight. */
  after(run: number, visit: (to: number, weight: number) => void): void;
}

export function weighLinks(question: PlanQuestion, links: Links): WeighedLinks {
  const { runs, chart } = question;
  // Powers of two: a fresh strand weighs at most 2^50, and there is a scatter for fewer runs than cells.
  let scale = 2 ** 50;
  while (scale > 1 && scale * question.tenths.attach > 2 ** 50) scale /= 2;
  const most = Math.floor(scale / chart.cells.length);
  const scatter = (from: number, to: number) =>
    Math.floor(
      mixed(
        runs.row[from]! * chart.columns + runs.last[from]!,
        runs.row[to]! * chart.columns + runs.first[to]!,
      ) * most,
    );
  const weightOf = (cost: number, from: number, to: number) => cost * scale + scatter(from, to);
  let weight = new Float64Array(links.from.length);
  const weighed = new Uint8Array(runs.count);
  return {
    fresh: question.tenths.attach * scale,
    before(run) {
      const begin = links.before(run);
      if (weighed[run] === 0) {
        weighed[run] = 1;
        if (weight.length < links.from.length) {
          const wider = new Float64Array(links.from.length);
          wider.set(weight);
          weight = wider;
        }
        for (let k = begin; k < begin + links.count(run); k++)
          weight[k] = weightOf(links.cost[k]!, links.from[k]!, run);
      }
      return begin;
    },
    count: (run) => links.count(run),
    from: () => links.from,
    weight: () => weight,
    after: (run, visit) => links.after(run, (to, cost) => visit(to, weightOf(cost, run, to))),
  };
}

/** Two cells mixed to a number from 0 to below 1, the same everywhere. */
function mixed(a: number, b: number): number {
  let state = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35);
  state = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d);
  state = Math.imul(state ^ (state >>> 12), 0x297a2d39);
  return ((state ^ (state >>> 15)) >>> 0) / 2 ** 32;
}
