/**
 * A yarn's fineness in the counts that labels and handbooks use, and its thickness from them.
 * tex = g per 1000 m, denier = g per 9000 m, Nm = m per g (ISO 1144).
 */
import { mmPerInch, mmPerYard } from './length.ts';
import { gPerPound } from './mass.ts';

export interface YarnCount {
  readonly tex: number;
  readonly denier: number;
  readonly nm: number;
}

/** The counts of a yarn of `metresPer100G` metres in 100 g. */
export function yarnCount(metresPer100G: number): YarnCount {
  return { tex: 100_000 / metresPer100G, denier: 900_000 / metresPer100G, nm: metresPer100G / 100 };
}

/** Yards in a pound. */
export function yardsPerPound(metresPer100G: number): number {
  return ((metresPer100G * 1000) / mmPerYard) * (gPerPound / 100);
}

/** Diameter in mm of a yarn that lies `wrapsPerInch` times side by side on an inch of a ruler. */
export function diameterFromWrapsMm(wrapsPerInch: number): number {
  return mmPerInch / wrapsPerInch;
}

/** Ashenhurst's rule: ends per inch at which a yarn lies side by side, 0.9 sqrt(yards per pound). */
export function ashenhurstEndsPerInch(yardsPerPound: number): number {
  return 0.9 * Math.sqrt(yardsPerPound);
}

/**
 * The least that a yarn's diameter can be, in mm, by Ashenhurst's rule. The rule was made for hard spun yarns: a
 * soft one measures more, so a measured diameter below this is a slip of the ruler or the label.
 */
export function leastDiameterMm(metresPer100G: number): number {
  return mmPerInch / ashenhurstEndsPerInch(yardsPerPound(metresPer100G));
}
