/**
 * The one change by which strands are improved: two strands swap their tails. The one that is tied up to a run goes
 * on with a run of the other, and the other goes on with what came after, if it may. Either tail may be nothing: then
 * strands are put together, or taken apart. On one strand, what lies between the two runs becomes a strand of its own.
 *
 * By such swaps every way to tie a chart can be reached from every other, and each is priced exactly, pieces and all,
 * from the lists at its ends (`strand-tables.ts`).
 */

import type { Links } from '../question/links.ts';
import type { Crowd } from './crowd.ts';
import type { StrandTables } from './strand-tables.ts';

export class TailSwaps {
  readonly #links: Links;
  readonly #tables: StrandTables;
  readonly #crowd: Crowd | null;
  readonly #crowdPrice: number;

  /** With a crowd, each strand that hangs beyond the maker's wish costs so much for each boundary, in tenths. */
  constructor(links: Links, tables: StrandTables, crowd: Crowd | null, crowdPrice: number) {
    this.#links = links;
    this.#tables = tables;
    this.#crowd = crowd;
    this.#crowdPrice = crowdPrice;
  }

  /** By how much the whole becomes dearer, in tenths, if `to` comes right after `from`; the two are a link. */
  price(from: number, to: number): number {
    return this.#ownPrice(from, to) + (this.#crowd ? this.#crowdPriceOf(from, to, this.#crowd) : 0);
  }

  #ownPrice(from: number, to: number): number {
    const tables = this.#tables;
    const after = tables.next[from]!;
    const before = tables.previous[to]!;
    const across = tables.costAcross(from, to);
    if (tables.strand[from] === tables.strand[to]) {
      return across + tables.costWithin(after, before) - tables.costAcross(from, after);
    }
    const rest = this.#mayLink(before, after)
      ? tables.costAcross(before, after)
      : tables.costUpTo(before) + tables.costFrom(after);
    return across + rest - tables.costAcross(from, after) - tables.costAcross(before, to);
  }

  #crowdPriceOf(from: number, to: number, crowd: Crowd): number {
    const more = this.#crowdBy(from, to, crowd);
    this.#undoCrowd(from, to, crowd);
    return more * this.#crowdPrice;
  }

  /** Does what was priced. */
  swap(from: number, to: number): void {
    const tables = this.#tables;
    const after = tables.next[from]!;
    const before = tables.previous[to]!;
    const relink = this.#goesCrosswise(from, to);
    if (this.#crowd) this.#crowdBy(from, to, this.#crowd);
    if (after !== -1) tables.cut(from, after);
    if (before !== -1) tables.cut(before, to);
    tables.link(from, to);
    if (relink) tables.link(before, after);
    tables.renew(from, to);
    if (before !== -1 || after !== -1) tables.renew(before, after);
  }

  /** Whether what comes after `from` will follow what came before `to`. */
  #goesCrosswise(from: number, to: number): boolean {
    const { strand, next, previous } = this.#tables;
    return strand[from] !== strand[to] && this.#mayLink(previous[to]!, next[from]!);
  }

  /** Counts the swap in the crowd, before it is done; gives by how much more the wish is exceeded. */
  #crowdBy(from: number, to: number, crowd: Crowd): number {
    const after = this.#tables.next[from]!;
    const before = this.#tables.previous[to]!;
    const less = crowd.cut(from, after) + crowd.cut(before, to);
    const across = this.#goesCrosswise(from, to) ? crowd.link(before, after) : 0;
    return less + across + crowd.link(from, to);
  }

  #undoCrowd(from: number, to: number, crowd: Crowd): void {
    const after = this.#tables.next[from]!;
    const before = this.#tables.previous[to]!;
    crowd.cut(from, to);
    if (this.#goesCrosswise(from, to)) crowd.cut(before, after);
    crowd.link(from, after);
    crowd.link(before, to);
  }

  #mayLink(from: number, to: number): boolean {
    if (from === -1 || to === -1 || from >= to) return false;
    const begin = this.#links.before(to);
    const end = begin + this.#links.count(to);
    for (let k = begin; k < end; k++) if (this.#links.from[k] === from) return true;
    return false;
  }
}
