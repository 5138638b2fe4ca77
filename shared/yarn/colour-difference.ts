/**
 * How far apart two colours look. CIEDE2000 of CIELAB under D65 (Sharma, Wu and Dalal 2005, DOI 10.1002/col.20070)
 * answers 'do these two yarns look alike?': it is made for small differences. For large ones, as between a picture and
 * a handful of yarns, see `shared/picture/match-yarns.ts`.
 */
import { useMode as addMode, differenceCiede2000, modeLab65, modeRgb, modeXyz65 } from 'culori/fn';

/** CIELAB under D65: `l` from 0 to 100, `a` and `b` around 0. */
export interface CieLab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/**
 * Yarns less than this apart are taken for one another across a row. About 1 is the least that is seen side by side
 * on flat patches; yarn is lit from one side, and cells are small, so that more is needed. Value from memory: to be
 * tried on knotted swatches.
 */
export const LOOK_ALIKE_DELTA_E = 5;

addMode(modeRgb);
addMode(modeXyz65);
const toLab = addMode(modeLab65);
const difference = differenceCiede2000();

/** CIEDE2000 of two colours written as `#rrggbb`: 0 for the same colour, 100 from black to white. */
export function deltaE2000(hexA: string, hexB: string): number {
  return difference(hexA, hexB);
}

/** CIELAB of a colour written as `#rrggbb`. Throws where it is not. */
export function cieLabOf(hex: string): CieLab {
  const lab = toLab(hex);
  if (!lab) throw new Error(`${hex} is not a colour written as #rrggbb`);
  return { l: lab.l, a: lab.a, b: lab.b };
}

/** CIEDE2000 of two colours in CIELAB. */
export function deltaE2000OfLab(a: CieLab, b: CieLab): number {
  return difference({ mode: 'lab65', ...a }, { mode: 'lab65', ...b });
}

/** True where a maker may take one yarn for the other in normal sight and light. */
export function lookAlike(hexA: string, hexB: string): boolean {
  return deltaE2000(hexA, hexB) < LOOK_ALIKE_DELTA_E;
}
