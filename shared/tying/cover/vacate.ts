/**
 * Finds the best use for a place that has become free in a lightest cover though its price is below 0: the mirror of
 * `augment.ts`. A run that would gain by it takes the place and leaves its own, which another takes, and so on, until
 * a run that began a strand has found a place, or a place is left that nobody pays for. The cheapest such way is a
 * shortest path over places; a step is as long as the run taking it is worse off at the present prices.
 */
import type { Cover } from './cover.ts';
import { MinHeap } from './min-heap.ts';
import type { WeighedLinks } from './weighed-links.ts';

export function vacate(place: number, links: WeighedLinks, cover: Cover): void {
  const { previous, next, price, weight } = cover;
  const distances = new Map<number, number>([[place, 0]]);
  /** For each place on the way, the run that left it and the place it took instead. */
  const left = new Map<number, Step>();
  const settled: number[] = [];
  const heap = new MinHeap();
  heap.push(place, 0);
  let end = Number.POSITIVE_INFINITY;
  const last: { place: number; step: Step | undefined } = { place: -1, step: undefined };
  while (heap.size > 0 && heap.leastKey < end) {
    const distance = heap.leastKey;
    const nearest = heap.pop();
    if (distance > distances.get(nearest)!) continue;
    settled.push(nearest);
    // To leave this place to nobody costs what it is still worth.
    if (distance - price[nearest]! < end) {
      end = distance - price[nearest]!;
      last.place = nearest;
      last.step = left.get(nearest);
    }
    links.after(nearest, (run, linkWeight) => {
      const own = previous[run]!;
      if (own === nearest) return;
      const pays = own === -1 ? links.fresh : weight[run]! - price[own]!;
      const reached = distance + linkWeight - price[nearest]! - pays;
      if (reached >= end) return;
      const step = { run, took: nearest, weight: linkWeight };
      if (own === -1) {
        end = reached;
        last.place = -1;
        last.step = step;
        return;
      }
      if (reached >= (distances.get(own) ?? Number.POSITIVE_INFINITY)) return;
      distances.set(own, reached);
      left.set(own, step);
      heap.push(own, reached);
    });
  }
  for (const each of settled) {
    const distance = distances.get(each)!;
    if (distance < end) price[each]! += end - distance;
  }
  if (last.place !== -1) next[last.place] = -1;
  for (let step = last.step; step; step = left.get(step.took)) {
    previous[step.run] = step.took;
    weight[step.run] = step.weight;
    next[step.took] = step.run;
  }
}

/** A run leaves its place for another. */
interface Step {
  readonly run: number;
  readonly took: number;
  readonly weight: number;
}
