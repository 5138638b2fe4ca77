/** Shapes as pixels, computed straight from their strokes and points: the eye of the script that chooses them. */
import type { SymbolShape } from '../../shared/yarn/symbols.ts';
import { latticeAt, symbolGeometry } from './contours.ts';

export type Drawing = Pick<SymbolShape, 'strokes' | 'dots' | 'fills'>;

/** `ink[y * size + x]` is 1 where the pixel is printed; `size` pixels a side. */
export interface Bitmap {
  readonly size: number;
  readonly ink: Uint8Array;
}

/** Side of a cell of 2.5 mm, the smallest that a pattern prints, in pixels at `dpi`. */
export function cellPx(dpi: number): number {
  return (2.5 / 25.4) * dpi;
}

/** One-bit print of one cell of `sidePx` pixels: a pixel is inked where at least half of it is covered. */
export function oneBit(drawing: Drawing, sidePx: number): Bitmap {
  const size = Math.ceil(sidePx);
  const grey = coverage(drawing, sidePx);
  return { size, ink: Uint8Array.from(grey, (share) => (share >= 0.5 ? 1 : 0)) };
}

const SAMPLES = 4;

function coverage(drawing: Drawing, sidePx: number): Float64Array {
  const size = Math.ceil(sidePx);
  const grey = new Float64Array(size * size);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      let hits = 0;
      for (let sy = 0; sy < SAMPLES; sy++) {
        for (let sx = 0; sx < SAMPLES; sx++) {
          const atX = (x + (sx + 0.5) / SAMPLES) / sidePx;
          const atY = (y + (sy + 0.5) / SAMPLES) / sidePx;
          if (covers(drawing, atX, atY)) hits++;
        }
      }
      grey[y * size + x] = hits / (SAMPLES * SAMPLES);
    }
  }
  return grey;
}

function covers({ strokes, dots, fills }: Drawing, x: number, y: number): boolean {
  const half = symbolGeometry.strokeWidth / 2;
  if (
    dots.some(([dx, dy]) => Math.hypot(x - latticeAt(dx!), y - latticeAt(dy!)) <= symbolGeometry.dotRadius)
  ) {
    return true;
  }
  if (strokes.some((stroke) => nearLine(stroke, x, y, half))) return true;
  return fills.some((fill) => inside(fill, x, y) || nearLine([...fill, fill[0]!, fill[1]!], x, y, half));
}

function nearLine(points: readonly number[], x: number, y: number, within: number): boolean {
  for (let i = 0; i + 3 < points.length; i += 2) {
    const ax = latticeAt(points[i]!);
    const ay = latticeAt(points[i + 1]!);
    const dx = latticeAt(points[i + 2]!) - ax;
    const dy = latticeAt(points[i + 3]!) - ay;
    const along = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    if (Math.hypot(x - ax - along * dx, y - ay - along * dy) <= within) return true;
  }
  return false;
}

function inside(points: readonly number[], x: number, y: number): boolean {
  let odd = false;
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const [ax, ay] = [latticeAt(points[i]!), latticeAt(points[i + 1]!)];
    const [bx, by] = [latticeAt(points[j]!), latticeAt(points[j + 1]!)];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) odd = !odd;
  }
  return odd;
}
