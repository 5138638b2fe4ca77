/**
 * Arrays that have been used and are used again. A plan that is repaired many times a minute would else make and drop
 * megabytes each time, and now and then wait for them to be cleared away, longer than for the repair itself.
 */
export class SpareArrays {
  readonly #ints: Int32Array[] = [];
  readonly #floats: Float64Array[] = [];

  /** So many whole numbers, which may be anything yet. */
  ints(length: number): Int32Array {
    const spare = this.#ints.pop();
    const fits = spare && spare.buffer.byteLength >= length * Int32Array.BYTES_PER_ELEMENT;
    return (fits ? new Int32Array(spare.buffer) : new Int32Array(length + slack)).subarray(0, length);
  }

  /** So many numbers, which may be anything yet. */
  floats(length: number): Float64Array {
    const spare = this.#floats.pop();
    const fits = spare && spare.buffer.byteLength >= length * Float64Array.BYTES_PER_ELEMENT;
    return (fits ? new Float64Array(spare.buffer) : new Float64Array(length + slack)).subarray(0, length);
  }

  /** Nobody may use them any more. */
  takeBack(...arrays: readonly (Int32Array | Float64Array)[]): void {
    for (const array of arrays) {
      if (array instanceof Int32Array) this.#ints.push(array);
      else this.#floats.push(array);
    }
  }
}

/** By so much they may grow, as charts do run by run, before others are made. */
const slack = 1000;
