/**
 * Chance that is the same each time: numbers from 0 to below 1 from a seed, by a linear congruence modulo 2^32 with
 * the multiplier and increment of *Numerical Recipes* (value from memory).
 */
export function seededChance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
