/**
 * Touching yarns that can't be told apart, and in which sight: the picture's outlines are lost there, and a buyer takes
 * one square of the chart for the other.
 */
import type { Chart } from '../chart/chart.ts';
import { codeOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { type CieLab, cieLabOf, deltaE2000OfLab, LOOK_ALIKE_DELTA_E } from './colour-difference.ts';
import { type Sight, seenAs, sights } from './sight.ts';
import { type TouchingPair, touchingPairs } from './touching.ts';

/** One sight in which two yarns look alike, and how far apart they look in it. */
export interface AlikeSight {
  readonly sight: Sight;
  /** CIEDE2000; in grey the difference in CIE lightness L*, of 100 from black to white. */
  readonly difference: number;
}

export interface AlikePair extends TouchingPair {
  /** In the order of `sights`; at least one. */
  readonly alike: readonly AlikeSight[];
}

/**
 * Greys closer than this are taken for one another in print: screens of dots, ink that spreads and paper that is not
 * white leave a scale of about a dozen greys from 0 to 100. Value from memory: to be tried on a printed page.
 */
export const LOOK_ALIKE_LIGHTNESS = 8;

/** `yarns` hold every yarn of the chart. Those that touch in the most places first. */
export function alikePairs(chart: Chart, yarns: readonly Pick<Yarn, 'id' | 'color'>[]): AlikePair[] {
  const looks = new Map(yarns.map(({ id, color }) => [codeOf(id), looksOf(color)]));
  const looksOfCode = (code: number) => {
    const found = looks.get(code);
    if (!found) throw new Error(`the chart has cells of code ${code}, and no such yarn`);
    return found;
  };
  return touchingPairs(chart).flatMap((pair) => {
    const alike = alikeSights(looksOfCode(pair.a), looksOfCode(pair.b));
    return alike.length === 0 ? [] : [{ ...pair, alike }];
  });
}

type Looks = Record<Sight, CieLab>;

function looksOf(hex: string): Looks {
  return Object.fromEntries(sights.map((sight) => [sight, cieLabOf(seenAs(sight, hex))])) as Looks;
}

function alikeSights(a: Looks, b: Looks): AlikeSight[] {
  return sights.flatMap((sight) => {
    const grey = sight === 'grey';
    const difference = grey ? Math.abs(a.grey.l - b.grey.l) : deltaE2000OfLab(a[sight], b[sight]);
    return difference < (grey ? LOOK_ALIKE_LIGHTNESS : LOOK_ALIKE_DELTA_E) ? [{ sight, difference }] : [];
  });
}
