/**
 * Yarns chosen from a picture: their colours are the picture's, all else is copied from a yarn that the maker has.
 * They come in the order of the cells they cover, so `y1`, the first, is the one to take as the ground.
 */
import { yarnIdOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { colourNames } from '../yarn/colour-name.ts';
import type { CellColours } from './cell-colours.ts';
import { stepsOfHex } from './cell-colours.ts';
import { chooseColours } from './choose-colours.ts';
import { type ColourInUse, dropLookAlikes } from './drop-look-alikes.ts';
import { matchYarns } from './match-yarns.ts';
import { nearestColours } from './nearest-colours.ts';

export interface YarnsToChoose {
  /** At most so many; fewer where the picture has fewer colours. */
  readonly count: number;
  /** Given to the yarns in this order; at least `count` of them, no two alike. */
  readonly symbols: readonly string[];
  /** Gives thickness, metres and skein. */
  readonly like: Omit<Yarn, 'id' | 'name' | 'color' | 'symbol'>;
}

export interface ChosenYarns {
  readonly yarns: readonly Yarn[];
  /** The code of each cell's yarn. */
  readonly codes: Uint8Array<ArrayBuffer>;
}

export function chooseYarns(cells: CellColours, { count, symbols, like }: YarnsToChoose): ChosenYarns {
  if (symbols.length < count) throw new Error(`${count} yarns need more than ${symbols.length} symbols`);
  const chosen = colours(cells, count);
  const names = colourNames(chosen.map(({ color }) => color));
  const yarns = chosen.map(
    ({ color }, place): Yarn => ({
      id: yarnIdOf(place + 1),
      name: names[place]!,
      color,
      symbol: symbols[place]!,
      diameterMm: like.diameterMm,
      metresPer100G: like.metresPer100G,
      skeinG: like.skeinG,
    }),
  );
  return { yarns, codes: matchYarns(cells, yarns) };
}

/** By the cells that each covers, the most first. */
function colours(cells: CellColours, count: number): ColourInUse[] {
  const chosen = inUse(cells, chooseColours(cells, count));
  const kept = dropLookAlikes(chosen);
  return kept.length === chosen.length
    ? chosen
    : inUse(
        cells,
        kept.map(({ color }) => color),
      );
}

function inUse(cells: CellColours, hexes: readonly string[]): ColourInUse[] {
  const covered = new Float64Array(hexes.length);
  for (const index of nearestColours(cells, hexes.map(stepsOfHex))) covered[index] = covered[index]! + 1;
  return hexes
    .map((color, index) => ({ color, cells: covered[index]! }))
    .filter((each) => each.cells > 0)
    .sort((a, b) => b.cells - a.cells || (a.color < b.color ? -1 : 1));
}
