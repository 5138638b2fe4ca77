/**
 * Yarns chosen from a picture: their colours are the picture's, all else is copied from a yarn that the maker has.
 * They come in the order of the cells they cover, so `y1`, the first, is the one to take as the ground.
 */
import { codeOf, yarnIdOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { colourNames } from '../yarn/colour-name.ts';
import type { CellColours } from './cell-colours.ts';
import { stepsOfHex } from './cell-colours.ts';
import { chooseColours } from './choose-colours.ts';
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
  const colours = chooseColours(cells, count);
  const nearest = nearestColours(cells, colours.map(stepsOfHex));
  const covered = new Float64Array(colours.length);
  for (const index of nearest) covered[index] = covered[index]! + 1;
  const order = colours
    .map((_, index) => index)
    .filter((index) => covered[index]! > 0)
    .sort((a, b) => covered[b]! - covered[a]! || (colours[a]! < colours[b]! ? -1 : 1));

  const names = colourNames(order.map((index) => colours[index]!));
  const yarns = order.map(
    (index, place): Yarn => ({
      id: yarnIdOf(place + 1),
      name: names[place]!,
      color: colours[index]!,
      symbol: symbols[place]!,
      diameterMm: like.diameterMm,
      metresPer100G: like.metresPer100G,
      skeinG: like.skeinG,
    }),
  );
  const codes = new Uint8Array(colours.length);
  order.forEach((index, place) => {
    codes[index] = codeOf(yarns[place]!.id);
  });
  return { yarns, codes: nearest.map((index) => codes[index]!) };
}
