import type { CellColours, Steps } from './cell-colours.ts';

/**
 * For each cell the index of the nearest of at most 255 colours, by OKLab distance; the first of them where two are as
 * near.
 */
export function nearestColours(cells: CellColours, palette: readonly Steps[]): Uint8Array<ArrayBuffer> {
  if (palette.length === 0 || palette.length > 255)
    throw new Error(`${palette.length} colours to choose from`);
  const places = Int32Array.from(palette.flatMap(({ l, a, b }) => [l, a, b]));
  const nearest = new Uint8Array(cells.length / 3);
  for (let i = 0; i < nearest.length; i++) {
    const l = cells[3 * i]!;
    const a = cells[3 * i + 1]!;
    const b = cells[3 * i + 2]!;
    let least = Number.POSITIVE_INFINITY;
    for (let k = 0; k < palette.length; k++) {
      const dl = l - places[3 * k]!;
      const da = a - places[3 * k + 1]!;
      const db = b - places[3 * k + 2]!;
      const distance = dl * dl + da * da + db * db;
      if (distance < least) {
        least = distance;
        nearest[i] = k;
      }
    }
  }
  return nearest;
}
