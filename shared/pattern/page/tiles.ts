/** A drawing in true size that takes several sheets: what of it stands on which. */
import type { Area } from './papers.ts';

export interface Tile {
  /** What the sheet holds, in mm of the drawing from its upper left corner. */
  readonly window: Area;
  /** From 1. */
  readonly number: number;
}

/**
 * Row by row from the left, on as few sheets as there can be. Side by side they are of one width: a narrow strip left over for
 * the last would be hard to tape to the others. Below one another the last is as high as what is left, for a fringe may
 * not reach down to it everywhere. `room` is what one sheet holds.
 */
export function tilesOf(
  { width, height }: { width: number; height: number },
  room: { width: number; height: number },
): Tile[] {
  const columns = sheetsFor(width, room.width);
  const tileWidth = width / columns;
  return Array.from({ length: columns * sheetsFor(height, room.height) }, (_, i) => {
    const y = Math.floor(i / columns) * room.height;
    const window = {
      x: (i % columns) * tileWidth,
      y,
      width: tileWidth,
      height: Math.min(room.height, height - y),
    };
    return { window, number: i + 1 };
  });
}

function sheetsFor(lengthMm: number, roomMm: number): number {
  return Math.max(1, Math.ceil((lengthMm - HAIR_MM) / roomMm));
}

/** What binary fractions leave over is no sheet of its own. */
const HAIR_MM = 0.01;
