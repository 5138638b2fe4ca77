/**
 * What the gauge is taken to be from the thickness of cord and yarn alone, until a swatch tells. With D the cord's and
 * d the yarn's diameter, both in mm:
 *   pitch   p = D + 2 d c      the cord, and the yarn on both sides of it, pressed together
 *   row     h = 2 x 2 d c'     two half hitches, each two yarns high, pressed together
 *   knot    L = k x 2 sqrt((pi (D + d))^2 + (h / 2)^2) + p
 * A knot is two turns of a helix (length of a coil: N sqrt((pi D)^2 + P^2)) and the way to the next cord. The
 * compressions c and c' are values from memory, to be measured; k is 1 until a swatch has been measured.
 */

/** What a swatch was tied with, or a hanging is to be tied with: both diameters in mm. */
export interface Thickness {
  readonly cordMm: number;
  readonly yarnMm: number;
}

/** Values from memory, to be measured: how far yarn is pressed together between cords, and between rows. */
const pressedAcross = 0.5;
const pressedDown = 0.6;

export function pitchFromThicknessMm({ cordMm, yarnMm }: Thickness): number {
  return cordMm + 2 * yarnMm * pressedAcross;
}

export function rowHeightFromThicknessMm({ yarnMm }: Thickness): number {
  return 2 * (2 * yarnMm) * pressedDown;
}

/** One knot, with k = 1. */
export function knotFromThicknessMm(thickness: Thickness): number {
  return helixMm(thickness, rowHeightFromThicknessMm(thickness)) + pitchFromThicknessMm(thickness);
}

/** Two turns of yarn around a cord, along the middle of the yarn, rising by one row. */
export function helixMm({ cordMm, yarnMm }: Thickness, rowHeightMm: number): number {
  return 2 * Math.hypot(Math.PI * (cordMm + yarnMm), rowHeightMm / 2);
}
