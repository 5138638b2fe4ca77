/** A drawing in true size that takes several sheets: what of it stands on which. */
import type { Area } from './papers.ts';

export interface Tile {
  /** What the sheet holds, in mm of the drawing from its upper left corner. */
  readonly window: Area;
  /** From 1. */
  readonly number: number;
}

/** Row by row from the left; the last ones are as small as what is left. `room` is what one sheet holds. */
export function tilesOf(
  { width, height }: { width: number; height: number },
  room: { width: number; height: number },
): Tile[] {
  const tiles: Tile[] = [];
  for (let y = 0; y < height - HAIR_MM; y += room.height) {
    for (let x = 0; x < width - HAIR_MM; x += room.width) {
      const window = {
        x,
        y,
        width: Math.min(room.width, width - x),
        height: Math.min(room.height, height - y),
      };
      tiles.push({ window, number: tiles.length + 1 });
    }
  }
  return tiles;
}

/** What binary fractions leave over is no sheet of its own. */
const HAIR_MM = 0.01;
