import type { YarnLook } from '../design/yarn-edits.ts';
import { colourNameBeside } from './colour-name.ts';

/**
 * The same kind of yarn in another colour (`#rrggbb`): as thick, in skeins of the same size and price, none of it owned
 * as yet. It is named for its colour, unlike the names that are taken.
 */
export function lookInColour(yarn: YarnLook, hex: string, takenNames: readonly string[]): YarnLook {
  const { diameterMm, metresPer100G, skeinG, price } = yarn;
  const look = { name: colourNameBeside(hex, takenNames), color: hex, diameterMm, metresPer100G, skeinG };
  return price === undefined ? look : { ...look, price };
}
