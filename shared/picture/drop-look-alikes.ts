/**
 * Colours chosen from a picture that nobody would buy a yarn for: where a flat drawing's edges are blended, a handful of
 * cells have a colour that can't be told from that of the field beside them.
 */
import { deltaE2000 } from '../yarn/colour-difference.ts';

/** Colours less than this apart (CIEDE2000) look like one yarn. Value from memory: to be tried on skeins. */
const ALIKE_DELTA_E = 2;

/** A colour has few cells where another has more than so many times as many. Value from memory. */
const FEW = 10;

export interface ColourInUse {
  /** `#rrggbb`. */
  readonly color: string;
  /** Cells that it covers. */
  readonly cells: number;
}

/** The colours without those of few cells that look like one of many; the others in their order. */
export function dropLookAlikes<T extends ColourInUse>(colours: readonly T[]): T[] {
  const byCells = colours.toSorted((a, b) => b.cells - a.cells);
  const kept: T[] = [];
  for (const each of byCells) {
    const isSpare = kept.some(
      ({ color, cells }) => cells > FEW * each.cells && deltaE2000(color, each.color) < ALIKE_DELTA_E,
    );
    if (!isSpare) kept.push(each);
  }
  return colours.filter((each) => kept.includes(each));
}
