/** Choosing a dowel: which of several carries the hanging, and what would fit on each. */
import type { Design } from '../design/design.ts';
import { limits } from '../design/limits.ts';
import { dowelSpread, hungMm } from './dowel.ts';
import { gaugeSpread, spreadOf } from './gauge-spread.ts';
import { headInCords, headsOf } from './heads.ts';

export interface DowelFit {
  readonly lengthMm: number;
  /** Whole cords that fit between the overhangs with their lark's heads, at the gauge as it is; 0 where there is no room. */
  readonly cords: number;
  /** Cords that fit even where gauge and lark's heads come out at the wide ends of their intervals. */
  readonly cordsSurely: number;
  /** Width of `cords` cords. */
  readonly widthMm: number;
  /** Whether the hanging fits: as its gauge is, and at the upper end of what it may take. */
  readonly fits: boolean;
  readonly fitsSurely: boolean;
  /** What is left free at each end with the hanging and its heads in the middle; below 0 where the dowel is shorter. */
  readonly endsMm: number;
}

export interface FittingDowel {
  readonly choices: readonly DowelFit[];
  /** The shortest dowel that the hanging fits on; null where none is long enough. */
  readonly shortestMm: number | null;
  readonly shortestSurelyMm: number | null;
}

/** `lengthsMm`: the dowels to choose from, see `nominal-dowels.ts`; told from the shortest on. */
export function fittingDowel(
  lengthsMm: readonly number[],
  design: Pick<Design, 'columns' | 'dowel' | 'cord' | 'yarns' | 'ground' | 'swatches'>,
): FittingDowel {
  const spread = gaugeSpread(design);
  const pitchMm = spreadOf(spread, (gauge) => gauge.pitchMm);
  const minLengthMm = dowelSpread(design, spread);
  const hung = hungMm(design, spread.gauge);
  const { headWidthMm } = headsOf(design, spread.gauge);
  const widestHeadMm = headsOf(design, spread.gauge, headInCords.high).headWidthMm;
  const choices = lengthsMm
    .toSorted((a, b) => a - b)
    .map((lengthMm): DowelFit => {
      const roomMm = lengthMm - 2 * design.dowel.overhangMm;
      const cords = cordsIn(roomMm, pitchMm.value, headWidthMm);
      return {
        lengthMm,
        cords,
        cordsSurely: cordsIn(roomMm, pitchMm.high, widestHeadMm),
        widthMm: cords * pitchMm.value,
        fits: lengthMm >= minLengthMm.value - noiseMm,
        fitsSurely: lengthMm >= minLengthMm.high - noiseMm,
        endsMm: (lengthMm - hung) / 2,
      };
    });
  return {
    choices,
    shortestMm: choices.find(({ fits }) => fits)?.lengthMm ?? null,
    shortestSurelyMm: choices.find(({ fitsSurely }) => fitsSurely)?.lengthMm ?? null,
  };
}

/** A dowel that is just long enough must not seem too short by the noise of binary fractions. */
const noiseMm = 1e-6;

/** Never more than a chart may have. Two cords share a head. */
function cordsIn(roomMm: number, pitchMm: number, headWidthMm: number): number {
  const below = Math.floor((roomMm + noiseMm) / pitchMm);
  const above = 2 * Math.floor((roomMm + noiseMm) / headWidthMm);
  return Math.min(limits.columns, Math.max(0, Math.min(below, above)));
}
