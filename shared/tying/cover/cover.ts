/**
 * A path cover on its way to the lightest, with the prices that prove it: each run takes at most one run before it,
 * and is taken by at most one run after it.
 *
 * It is an assignment problem. Each run has a choice among the runs before it, or a strand of its own at the weight
 * of a fresh one. `price[i]`, never positive, is what run i's place as a predecessor is worth to others. Always holds:
 * no run could choose better at these prices than what it has, and a place that nobody takes has the price 0. A cover
 * of all runs for which both hold is the lightest (duality of linear programs).
 */
export interface Cover {
  /** The run before, or -1 where a strand begins. */
  readonly previous: Int32Array;
  /** The run after, or -1. */
  readonly next: Int32Array;
  /** Weight of the link to `previous`; meaningless where that is -1. */
  readonly weight: Float64Array;
  readonly price: Float64Array;
}

/** Lets a run follow another as the maker has pinned it: neither is among the links, so nothing will move them. */
export function hold({ previous, next }: Cover, from: number, to: number): void {
  previous[to] = from;
  next[from] = to;
}

export function emptyCover(runs: number): Cover {
  return {
    previous: new Int32Array(runs).fill(-1),
    next: new Int32Array(runs).fill(-1),
    weight: new Float64Array(runs),
    price: new Float64Array(runs),
  };
}
