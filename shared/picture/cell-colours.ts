/**
 * Cells in OKLab, where distances are what the eye sees. Each value is a whole number of steps, 2^20 to the unit: far
 * finer than anyone sees, and whole, so that sums and comparisons of distances are exact and don't hang on the order
 * of the cells.
 */
import { hexToOkLab, linearToOkLab, type OkLab, okLabToHex } from '../yarn/colour.ts';

/** `l, a, b` of each cell, one after the other, in steps. */
export type CellColours = Int32Array;

/** A colour with `l`, `a` and `b` in steps. */
export type Steps = OkLab;

export const STEP_BITS = 20;
const STEPS = 2 ** STEP_BITS;

/** `linear` holds red, green, blue of each cell as linear light, as in `PictureCells`. */
export function cellColours(linear: Float64Array): CellColours {
  const colours = new Int32Array(linear.length);
  for (let i = 0; i < linear.length; i += 3) {
    const { l, a, b } = linearToOkLab({ r: linear[i]!, g: linear[i + 1]!, b: linear[i + 2]! });
    colours[i] = Math.round(l * STEPS);
    colours[i + 1] = Math.round(a * STEPS);
    colours[i + 2] = Math.round(b * STEPS);
  }
  return colours;
}

export function stepsOfHex(hex: string): Steps {
  const { l, a, b } = hexToOkLab(hex);
  return { l: Math.round(l * STEPS), a: Math.round(a * STEPS), b: Math.round(b * STEPS) };
}

export function hexOfSteps({ l, a, b }: Steps): string {
  return okLabToHex({ l: l / STEPS, a: a / STEPS, b: b / STEPS });
}
