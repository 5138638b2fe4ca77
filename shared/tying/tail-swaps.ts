/**
 * The one change by which strands are improved: two strands swap their tails. The one that is tied up to a run goes
 * on with a run of the other, and the other goes on with what came after, if it may. Either tail may be nothing: then
 * strands are put together, or taken apart. On one strand, what lies between the two runs becomes a strand of its own.
 *
 * By such swaps every way to tie a chart can be reached from every other, and each is priced exactly, pieces and all,
 * from the lists at its ends (`strand-tables.ts`).
 */
import type { Links } from './links.ts';
import type { StrandTables } from './strand-tables.ts';

export class TailSwaps {
  readonly #links: Links;
  readonly #tables: StrandTables;

  constructor(links: Links, tables: StrandTables) {
    this.#links = links;
    this.#tables = tables;
  }

  /** By how much the whole becomes dearer, in tenths, if `to` comes right after `from`; the two are a link. */
  price(from: number, to: number): number {
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

  /** Does what was priced. */
  swap(from: number, to: number): void {
    const tables = this.#tables;
    const after = tables.next[from]!;
    const before = tables.previous[to]!;
    const relink = tables.strand[from] !== tables.strand[to] && this.#mayLink(before, after);
    if (after !== -1) tables.cut(from, after);
    if (before !== -1) tables.cut(before, to);
    tables.link(from, to);
    if (relink) tables.link(before, after);
    tables.renew(from, to);
    if (before !== -1 || after !== -1) tables.renew(before, after);
  }

  #mayLink(from: number, to: number): boolean {
    if (from === -1 || to === -1 || from >= to) return false;
    const begin = this.#links.before(to);
    const end = begin + this.#links.count(to);
    for (let k = begin; k < end; k++) if (this.#links.from[k] === from) return true;
    return false;
  }
}
