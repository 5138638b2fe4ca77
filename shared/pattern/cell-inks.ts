/** How each yarn's cells are printed: its colour, its symbol, and the ink in which the symbol is best seen on it. */
import { BARE, codeOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { inkOn } from '../yarn/colour-contrast.ts';
import type { CellsItem } from './page.ts';
import { inks } from './style.ts';

export function cellInks(yarns: readonly Pick<Yarn, 'id' | 'color' | 'symbol'>[]): CellsItem['inks'] {
  const all: CellsItem['inks'] = { [BARE]: { fill: inks.paper, ink: inks.soft } };
  for (const { id, color, symbol } of yarns) all[codeOf(id)] = { fill: color, symbol, ink: inkOn(color) };
  return all;
}
