/**
 * Improves strands and their pieces together by simulated annealing with tail swaps (`tail-swaps.ts`): for run after
 * run, again and again, a swap is taken by chance. Those that save are done, and at first also some that cost a
 * little, so that the search leaves the valleys that single swaps can't. What a swap may cost falls to nothing by the
 * end. (Runs in order, not by chance: neighbours lie near in memory, which takes two thirds of the time.)
 *
 * A bounded search, not an exact one: so many swaps are tried, counted and not timed, with chance passed in, so the
 * same question gives the same strands. All arithmetic is of sums and products, which every machine does alike.
 */

import type { Links } from '../question/links.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import type { Crowd } from './crowd.ts';
import type { StrandTables } from './strand-tables.ts';
import { TailSwaps } from './tail-swaps.ts';

/**
 * Changes `tables`, and now and then gives the share of the tries that is done. `chance`: from 0 to below 1. With a
 * `crowd` a strand that hangs beyond the maker's wish costs as much as a piece, for each row.
 */
export function* coolStrands(
  { runs, tied, tenths }: PlanQuestion,
  links: Links,
  tables: StrandTables,
  tries: number,
  chance: () => number,
  crowd: Crowd | null,
): Generator<number, void> {
  const firstFree = tied?.choice.previous.length ?? 0;
  const free = runs.count - firstFree;
  if (free === 0) return;
  const swaps = new TailSwaps(links, tables, crowd, tenths.attach);
  const hottest = hottestShare * tenths.attach;
  for (let tried = 0; tried < tries; tried++) {
    if (tried % triesBetweenLooks === triesBetweenLooks - 1) yield tried / tries;
    const to = firstFree + (tried % free);
    const place = links.before(to) + Math.floor(chance() * links.count(to));
    // Squared, so that it is cool for most of the time; and squared, so that most swaps may cost little and few much.
    const mayCost = hottest * ((tries - tried) / tries) ** 2 * chance() ** 2;
    if (links.count(to) === 0) continue;
    const from = links.from[place]!;
    if (tables.next[from] !== to && swaps.price(from, to) <= mayCost) swaps.swap(from, to);
  }
}

/** What a swap may cost at first, as a share of what a piece costs. Found by trying it on charts of pictures. */
const hottestShare = 0.14;

const triesBetweenLooks = 4096;
