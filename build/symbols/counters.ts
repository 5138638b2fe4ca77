import { cellPx, type Drawing, oneBit } from './raster.ts';

/** Pixels at 150 dpi that a space shut in by strokes needs, so that ink does not fill it. */
const LEAST_PX = 6;

/** False where a drawing shuts in a space so small that it would print solid. */
export function hasOpenCounters(drawing: Drawing): boolean {
  const { size, ink } = oneBit(drawing, cellPx(150));
  const side = size + 2;
  const seen = new Uint8Array(side * side);
  const isWhite = (x: number, y: number) =>
    x < 1 || y < 1 || x > size || y > size || ink[(y - 1) * size + x - 1] === 0;
  const flood = (start: number): number => {
    const open = [start];
    let count = 0;
    seen[start] = 1;
    while (open.length > 0) {
      const at = open.pop()!;
      count++;
      const [x, y] = [at % side, Math.floor(at / side)];
      for (const [nx, ny] of [
        [x - 1, y],
        [x + 1, y],
        [x, y - 1],
        [x, y + 1],
      ] as const) {
        if (nx < 0 || ny < 0 || nx >= side || ny >= side || seen[ny * side + nx] || !isWhite(nx, ny))
          continue;
        seen[ny * side + nx] = 1;
        open.push(ny * side + nx);
      }
    }
    return count;
  };
  flood(0);
  for (let at = 0; at < side * side; at++) {
    if (seen[at] || !isWhite(at % side, Math.floor(at / side))) continue;
    if (flood(at) < LEAST_PX) return false;
  }
  return true;
}
