/**
 * How many strands hang at each boundary between two rows, while strands are being improved, and by how many the
 * maker's wish is exceeded there.
 */
import type { PlanQuestion } from '../question/strand-choice.ts';

export class Crowd {
  readonly #question: PlanQuestion;
  readonly #wish: number;
  /** At index r: between rows r and r + 1, from 0. */
  readonly #live: Int32Array;
  /** 1 for a boundary where nothing is left to be done. */
  readonly #givenUp: Uint8Array;

  constructor(question: PlanQuestion, previous: Int32Array, wish: number) {
    this.#question = question;
    this.#wish = wish;
    this.#live = new Int32Array(question.chart.rows);
    this.#givenUp = new Uint8Array(question.chart.rows);
    previous.forEach((before, run) => {
      this.link(before, run);
    });
  }

  /** Counts a carry from one run to the other; gives by how much more the wish is exceeded. Either may be -1: none. */
  link(from: number, to: number): number {
    return this.#shift(from, to, 1);
  }

  /** The carry is no more. */
  cut(from: number, to: number): number {
    return this.#shift(from, to, -1);
  }

  /** Lets the boundary be as it is. */
  giveUp(boundary: number): void {
    this.#givenUp[boundary] = 1;
  }

  /** The boundary where most hang beyond the wish, the first of several, of those not given up; -1 where none do. */
  worst(): number {
    let worst = -1;
    let most = this.#wish;
    this.#live.forEach((live, boundary) => {
      if (live <= most || this.#givenUp[boundary] === 1) return;
      most = live;
      worst = boundary;
    });
    return worst;
  }

  /** At how many boundaries that the carry passes the wish is exceeded. */
  relief(from: number, to: number): number {
    const { row } = this.#question.runs;
    let count = 0;
    for (let at = row[from]!; at < row[to]!; at++) if (this.#live[at]! > this.#wish) count++;
    return count;
  }

  #shift(from: number, to: number, by: 1 | -1): number {
    if (from === -1 || to === -1) return 0;
    const { row } = this.#question.runs;
    let more = 0;
    for (let at = row[from]!; at < row[to]!; at++) {
      const before = Math.max(0, this.#live[at]! - this.#wish);
      this.#live[at]! += by;
      more += Math.max(0, this.#live[at]! - this.#wish) - before;
    }
    return more;
  }
}
