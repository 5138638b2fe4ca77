/**
 * The strands that hang at the back, by yarn and by the cord where they hang, so that looking for one within reach
 * takes as long as the reach is wide, however many hang elsewhere. A strand is known by the run that it tied last.
 *
 * For each yarn and cord the strands are a list linked both ways, the one parked last at its head.
 */
import { limits } from '../../design/limits.ts';
import type { Runs } from '../runs.ts';

const none = -1;

export class ParkedStrands {
  readonly #runs: Runs;
  readonly #columns: number;
  readonly #heads: Int32Array;
  readonly #earlier: Int32Array;
  readonly #later: Int32Array;

  constructor(runs: Runs, columns: number) {
    this.#runs = runs;
    this.#columns = columns;
    this.#heads = new Int32Array((limits.yarns + 1) * columns).fill(none);
    this.#earlier = new Int32Array(runs.count).fill(none);
    this.#later = new Int32Array(runs.count).fill(none);
  }

  /** Parks the strand that has just tied `run`; runs are parked in tying order. */
  park(run: number): void {
    const place = this.#place(this.#runs.yarn[run]!, this.#runs.last[run]!);
    const before = this.#heads[place]!;
    this.#earlier[run] = before;
    if (before !== none) this.#later[before] = run;
    this.#heads[place] = run;
  }

  /** Takes a parked strand away. */
  take(run: number): void {
    const earlier = this.#earlier[run]!;
    const later = this.#later[run]!;
    if (earlier !== none) this.#later[earlier] = later;
    if (later !== none) this.#earlier[later] = earlier;
    else this.#heads[this.#place(this.#runs.yarn[run]!, this.#runs.last[run]!)] = earlier;
  }

  /** The strand parked last at that cord (from 0); -1 where none hangs. */
  lastAt(yarn: number, column: number): number {
    return this.#heads[this.#place(yarn, column)]!;
  }

  /** The strand parked before `run` at the same cord; -1 where there is none. */
  earlier(run: number): number {
    return this.#earlier[run]!;
  }

  #place(yarn: number, column: number): number {
    return yarn * this.#columns + column;
  }
}
