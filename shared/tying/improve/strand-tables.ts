/**
 * Strands that are being improved, with what it takes to price a change at once: for each run the ways to have tied
 * the strand up to it, and the ways to tie it from there on (`open-pieces.ts`). Two strands may then be cut and tied
 * crosswise for the price of looking at four such lists, however long they are.
 *
 * The ways up to a run depend only on what comes before it on its strand, those from it on only on what comes after;
 * a change renews the lists of the strands that it touches, and no others.
 */

import { hanging, yarnToTie } from '../pieces/best-pieces.ts';
import {
  beginPieces,
  closedCost,
  type Held,
  noPieces,
  type OpenPieces,
  tieOpenPieces,
  type YarnToTie,
} from '../pieces/open-pieces.ts';
import { carryLength } from '../question/carry.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import { knotsOf } from '../runs.ts';

export class StrandTables {
  readonly previous: Int32Array;
  readonly next: Int32Array;
  /** The first run of the strand that a run lies on. */
  readonly strand: Int32Array;
  readonly #question: PlanQuestion;
  readonly #upTo: OpenPieces[];
  readonly #from: OpenPieces[];
  readonly #firstFree: number;
  /** By the yarn's code. */
  readonly #yarns: readonly YarnToTie[];
  #spare = noPieces();
  readonly #within = [noPieces(), noPieces()];

  /** `previous` says which run follows which, and is not changed. */
  constructor(question: PlanQuestion, previous: Int32Array) {
    const { runs, tenths, tied } = question;
    this.#question = question;
    this.#yarns = Array.from(tenths.knot, (_, yarn) => yarnToTie(question, yarn));
    this.previous = previous.slice();
    this.next = new Int32Array(runs.count).fill(-1);
    this.strand = new Int32Array(runs.count);
    this.#firstFree = tied?.choice.previous.length ?? 0;
    this.#upTo = Array.from({ length: runs.count }, noPieces);
    this.#from = Array.from({ length: runs.count }, noPieces);
    for (let run = 0; run < runs.count; run++) {
      const before = previous[run]!;
      if (before !== -1) this.next[before] = run;
      this.strand[run] = before === -1 ? run : this.strand[before]!;
      if (run < this.#firstFree) this.#upTo[run] = hanging(question, run)!;
      else this.#tieUpTo(run);
    }
    for (let run = runs.count - 1; run >= this.#firstFree; run--) this.#tieFrom(run);
  }

  /** What a strand costs that ends with `run`, in tenths; nothing where there is no run. */
  costUpTo(run: number): number {
    return run === -1 ? 0 : closedCost(this.#upTo[run]!);
  }

  /** What a strand costs that begins with `run`, in tenths; nothing where there is no run. */
  costFrom(run: number): number {
    return run === -1 ? 0 : closedCost(this.#from[run]!);
  }

  /** What it costs to tie up to `from` and go on with `to`, carried or cut, as is cheaper. */
  costAcross(from: number, to: number): number {
    const cut = this.costUpTo(from) + this.costFrom(to);
    if (from === -1 || to === -1) return cut;
    return Math.min(cut, this.costCarried(from, to));
  }

  /** The same, if it is carried: infinite where no piece reaches. */
  costCarried(from: number, to: number): number {
    const { runs, tenths } = this.#question;
    const upTo = this.#upTo[from]!;
    const onward = this.#from[to]!;
    const carry = carryLength(this.#question, from, to);
    const room = tenths.room - carry;
    let least = Number.POSITIVE_INFINITY;
    // The more the one has used, the less the other may: from both ends of the lists at once.
    let way = onward.size - 1;
    for (let k = 0; k < upTo.size; k++) {
      while (way >= 0 && upTo.used[k]! + onward.used[way]! > room) way--;
      if (way < 0) break;
      least = Math.min(least, upTo.cost[k]! + onward.cost[way]!);
    }
    // The piece that is carried was counted on both sides.
    return least + carry + tenths.rowPrice * (runs.row[to]! - runs.row[from]!) - tenths.attach;
  }

  /** What a strand costs that is just the runs from `first` to `last` of one strand. */
  costWithin(first: number, last: number): number {
    let open: OpenPieces | null = null;
    for (let run = first; ; run = this.next[run]!) {
      const into: OpenPieces = this.#within[open === this.#within[0] ? 1 : 0]!;
      this.#tie(into, open, this.previous[run]!, run, run, this.#question.pinned?.held(run));
      if (run === last) return closedCost(into);
      open = into;
    }
  }

  /** Ends the strand after `from`; `to`, which followed, begins one. */
  cut(from: number, to: number): void {
    this.next[from] = -1;
    this.previous[to] = -1;
  }

  /** Lets `to`, which begins a strand, follow `from`, which ends one. */
  link(from: number, to: number): void {
    this.next[from] = to;
    this.previous[to] = from;
  }

  /** Renews the lists after cuts and links on both sides of a gap: from `to` on, and back from `from`. */
  renew(from: number, to: number): void {
    for (let run = to; run !== -1; run = this.next[run]!) {
      const before = this.previous[run]!;
      this.strand[run] = before === -1 ? run : this.strand[before]!;
    }
    for (let run = to; run !== -1; run = this.next[run]!) if (!this.#tieUpTo(run)) break;
    for (let run = from; run >= this.#firstFree; run = this.previous[run]!) if (!this.#tieFrom(run)) break;
  }

  /** True where the list changed. */
  #tieUpTo(run: number): boolean {
    const before = this.previous[run]!;
    const held = this.#question.pinned?.held(run);
    this.#tie(this.#spare, before === -1 ? null : this.#upTo[before]!, before, run, run, held);
    return this.#swap(this.#upTo, run);
  }

  #tieFrom(run: number): boolean {
    const after = this.next[run]!;
    const held = this.#question.pinned?.heldBackwards(run);
    this.#tie(this.#spare, after === -1 ? null : this.#from[after]!, run, after, run, held);
    return this.#swap(this.#from, run);
  }

  #swap(lists: OpenPieces[], run: number): boolean {
    const old = lists[run]!;
    if (alike(old, this.#spare)) return false;
    lists[run] = this.#spare;
    this.#spare = old;
    return true;
  }

  #tie(
    into: OpenPieces,
    open: OpenPieces | null,
    from: number,
    to: number,
    run: number,
    held: Held | undefined,
  ): void {
    const { runs, tenths } = this.#question;
    const yarn = this.#yarns[runs.yarn[run]!]!;
    if (!open) {
      beginPieces(into, knotsOf(runs, run), yarn, held);
      return;
    }
    const carry = carryLength(this.#question, from, to);
    const link = carry + tenths.rowPrice * (runs.row[to]! - runs.row[from]!);
    tieOpenPieces(into, open, carry, link, knotsOf(runs, run), yarn, held);
  }
}

function alike(a: OpenPieces, b: OpenPieces): boolean {
  if (a.size !== b.size) return false;
  for (let way = 0; way < a.size; way++) {
    if (a.used[way] !== b.used[way] || a.cost[way] !== b.cost[way]) return false;
  }
  return true;
}
