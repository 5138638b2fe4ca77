/**
 * The cheapest way to tie all runs with strands, were a piece as long as one likes: the minimum-cost path cover.
 *
 * Exact: the graph of links has no circle, so covering the runs by paths is an assignment of runs to the runs before
 * them, solved as a sparse linear assignment. First each run takes its best free place, then two passes in which a
 * run outbids the one that holds its best place by how much it would be worse off elsewhere; the few runs that are
 * left are placed by shortest augmenting paths (`augment.ts`). Prices of places only fall, none is negative by more
 * than a fresh strand weighs, and a place that was never taken keeps the price 0. With n runs and d links a run the
 * passes take O(n d); each augmenting way is local, so in practice the whole grows as n d log n.
 */

import type { PlanQuestion } from '../question/strand-choice.ts';
import { Augmenter } from './augment.ts';
import { type Cover, emptyCover, hold } from './cover.ts';
import type { WeighedLinks } from './weighed-links.ts';

export function pathCover({ runs, tied, pinned }: PlanQuestion, links: WeighedLinks): Cover {
  const cover = emptyCover(runs.count);
  const firstFree = tied?.choice.previous.length ?? 0;
  tied?.choice.previous.forEach((before, run) => {
    cover.previous[run] = before;
    if (before !== -1) cover.next[before] = run;
  });
  let waiting: number[] = [];
  for (let run = firstFree; run < runs.count; run++) {
    const before = pinned?.before[run] ?? -1;
    if (before === -1) waiting.push(run);
    else hold(cover, before, run);
  }
  for (let pass = 0; pass < passes; pass++) waiting = bid(waiting, links, cover);
  const augmenter = new Augmenter(links, cover);
  for (const run of waiting) augmenter.place(run);
  return cover;
}

/** More passes than three place hardly any run. */
const passes = 3;

/** Each waiting run takes its best place at the present prices; the runs that were outbid wait for the next pass. */
function bid(waiting: readonly number[], links: WeighedLinks, cover: Cover): number[] {
  const outbid: number[] = [];
  const { previous, next, price, weight } = cover;
  for (const run of waiting) {
    const begin = links.before(run);
    const from = links.from();
    const weights = links.weight();
    const stop = begin + links.count(run);
    let best = links.fresh;
    let second = Number.POSITIVE_INFINITY;
    let at = -1;
    for (let k = begin; k < stop; k++) {
      const value = weights[k]! - price[from[k]!]!;
      if (value < best) {
        second = best;
        best = value;
        at = k;
      } else if (value < second) second = value;
    }
    if (at === -1) {
      previous[run] = -1;
      continue;
    }
    const place = from[at]!;
    const holder = next[place]!;
    if (holder !== -1) {
      if (second === best) {
        // It would gain nothing by outbidding: an augmenting way decides.
        outbid.push(run);
        continue;
      }
      previous[holder] = -1;
      outbid.push(holder);
    }
    price[place]! -= second - best;
    previous[run] = place;
    weight[run] = weights[at]!;
    next[place] = run;
  }
  return outbid;
}
