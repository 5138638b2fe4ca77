/**
 * Gives one more run its place in a lightest cover: the shortest augmenting path. The run takes the place of another
 * after its predecessor, that one takes the next, and so on, until one takes a place that was free or begins a
 * strand. The least total weight is found as the shortest way through a graph of places (Dijkstra, a heap), where a
 * step is as long as the run taking it is worse off than now. Then prices are raised so that all laws of `cover.ts`
 * hold again. Ways are short, since none is longer than what a fresh strand weighs.
 */
import type { Cover } from './cover.ts';
import { MinHeap } from './min-heap.ts';
import type { WeighedLinks } from './weighed-links.ts';

/** What is known of each place in the search that `seen` names: how far it is, and which run would take it. */
export interface SearchTable {
  searches: number;
  readonly seen: Int32Array;
  readonly distance: Float64Array;
  readonly taker: Int32Array;
  readonly takerWeight: Float64Array;
}

export function searchTable(runs: number): SearchTable {
  return {
    searches: 0,
    seen: new Int32Array(runs),
    distance: new Float64Array(runs),
    taker: new Int32Array(runs),
    takerWeight: new Float64Array(runs),
  };
}

export class Augmenter {
  readonly #links: WeighedLinks;
  readonly #cover: Cover;
  readonly #heap = new MinHeap();
  readonly #table: SearchTable;
  readonly #settled: number[] = [];

  /** `table` may have been used for other covers. */
  constructor(links: WeighedLinks, cover: Cover, table: SearchTable = searchTable(cover.previous.length)) {
    this.#links = links;
    this.#cover = cover;
    this.#table = table;
  }

  /** `run` has no place and is not counted as beginning a strand. */
  place(run: number): void {
    const { previous, next, price, weight } = this.#cover;
    const { distance: distances } = this.#table;
    this.#table.searches++;
    this.#heap.clear();
    this.#settled.length = 0;
    // The way may always end with a run that begins a strand: the nearest found so far.
    let beginner = run;
    let end = this.#links.fresh;
    this.#reach(run, 0, end);
    let place = -1;
    while (this.#heap.size > 0 && this.#heap.leastKey < end) {
      const distance = this.#heap.leastKey;
      const nearest = this.#heap.pop();
      if (distance > distances[nearest]!) continue;
      const holder = next[nearest]!;
      if (holder === -1) {
        place = nearest;
        end = distance;
        break;
      }
      this.#settled.push(nearest);
      const worth = distance - (weight[holder]! - price[nearest]!);
      if (worth + this.#links.fresh < end) {
        end = worth + this.#links.fresh;
        beginner = holder;
      }
      this.#reach(holder, worth, end);
    }
    for (const each of this.#settled) price[each]! += distances[each]! - end;
    if (place === -1) {
      // The beginner gives up its place, which its taker takes.
      place = previous[beginner]!;
      previous[beginner] = -1;
      if (beginner === run) return;
    }
    this.#shift(run, place);
  }

  /** Reaches all places that `run` may take, where `base` is the way so far without what `run` pays now. */
  #reach(run: number, base: number, end: number): void {
    const begin = this.#links.before(run);
    const from = this.#links.from();
    const weights = this.#links.weight();
    const { price } = this.#cover;
    const { searches, seen, distance: distances, taker, takerWeight } = this.#table;
    const stop = begin + this.#links.count(run);
    for (let k = begin; k < stop; k++) {
      const place = from[k]!;
      const distance = base + weights[k]! - price[place]!;
      if (distance >= end) continue;
      if (seen[place] === searches && distance >= distances[place]!) continue;
      seen[place] = searches;
      distances[place] = distance;
      taker[place] = run;
      takerWeight[place] = weights[k]!;
      this.#heap.push(place, distance);
    }
  }

  /** Hands the places on, from the last one of the way back to `run`. */
  #shift(run: number, last: number): void {
    const { previous, next, weight } = this.#cover;
    const { taker: takers, takerWeight } = this.#table;
    let place = last;
    while (true) {
      const taker = takers[place]!;
      const left = previous[taker]!;
      previous[taker] = place;
      weight[taker] = takerWeight[place]!;
      next[place] = taker;
      if (taker === run) return;
      place = left;
    }
  }
}
