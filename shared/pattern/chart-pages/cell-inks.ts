/**
 * How each yarn's cells are printed: its colour, its symbol, and the ink in which the symbol is best seen on it. In a copy
 * in symbols all cells are white; in one in greys they are the greys of `printed-greys.ts`.
 */
import { BARE, codeOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { inkOn } from '../../yarn/colour-contrast.ts';
import type { TouchingPair } from '../../yarn/touching.ts';
import type { Copy } from '../copy.ts';
import type { CellsItem } from '../page/page.ts';
import { inks } from '../page/style.ts';
import { printedGreys } from './printed-greys.ts';

/** `pairs`: which yarns touch on the chart. They are looked at only where greys are chosen. */
export function cellInks(
  yarns: readonly Pick<Yarn, 'id' | 'color' | 'symbol'>[],
  ink: Copy['ink'] = 'colour',
  pairs: readonly TouchingPair[] = [],
): CellsItem['inks'] {
  const fills = {
    colour: () => yarns.map(({ color }) => color),
    symbols: () => yarns.map(() => inks.paper),
    grey: () => printedGreys(yarns, pairs),
  }[ink]();
  const all: CellsItem['inks'] = { [BARE]: { fill: inks.paper, ink: inks.soft } };
  yarns.forEach(({ id, symbol }, i) => {
    all[codeOf(id)] = { fill: fills[i]!, symbol, ink: inkOn(fills[i]!) };
  });
  return all;
}
