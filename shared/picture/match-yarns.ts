/**
 * Each cell gets the yarn that looks nearest to it, by distance in OKLab. CIEDE2000 is made for colours that nearly
 * match; between a picture and a handful of yarns the distances are large, there it has jumps, and 'nearest' by it can
 * change along a smooth shade and back. OKLab keeps shades in order, and it is where yarns are chosen from a picture,
 * so that both agree.
 */
import { codeOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { type CellColours, stepsOfHex } from './cell-colours.ts';
import { nearestColours } from './nearest-colours.ts';

/** The code of each cell's yarn; of two yarns as near, the one that stands first in the list. */
export function matchYarns(
  cells: CellColours,
  yarns: readonly Pick<Yarn, 'id' | 'color'>[],
): Uint8Array<ArrayBuffer> {
  const codes = yarns.map(({ id }) => codeOf(id));
  const nearest = nearestColours(
    cells,
    yarns.map(({ color }) => stepsOfHex(color)),
  );
  return nearest.map((index) => codes[index]!);
}
