import { boxBetween } from './box.ts';
import type { Cell } from './cell.ts';
import { ellipseCounts } from './ellipse-counts.ts';
import type { Outline } from './outline.ts';
import type { Strips } from './strips.ts';

/** The ellipse that touches the four sides of the rectangle between two corners. */
export function ellipseStrips(from: Cell, to: Cell, code: number, { filled, width }: Outline): Strips {
  const { top, left, bottom, right } = boxBetween(from, to);
  const columns = right - left + 1;
  const counts = ellipseCounts(columns, bottom - top + 1);
  const inner = filled ? null : innerCounts(counts, columns, width);
  const strips: number[] = [];
  for (const [r, count] of counts.entries()) {
    const row = top + r;
    const start = left + (columns - count) / 2;
    const open = inner?.[r] ?? 0;
    if (open === 0) {
      strips.push(row, start, count, code);
      continue;
    }
    const side = (count - open) / 2;
    strips.push(row, start, side, code, row, start + side + open, side, code);
  }
  return new Int32Array(strips);
}

/**
 * How many cells of each row an outline of this width leaves open, in the row's middle. An open cell has at least
 * `width` cells of the ellipse at each of its four sides: that alone closes the outline, and at a width of one makes it
 * go on by corners where it can. A wider outline is thick at its slopes too: what it leaves open is the ellipse that
 * is smaller by the width all around.
 */
function innerCounts(counts: Int32Array, columns: number, width: number): Int32Array {
  const rows = counts.length;
  const open = new Int32Array(rows);
  const isHollow = columns > 2 * width && rows > 2 * width;
  if (!isHollow) return open;
  const smaller = width > 1 ? ellipseCounts(columns - 2 * width, rows - 2 * width) : null;
  for (let r = width; r < rows - width; r++) {
    const most = smaller?.[r - width] ?? columns;
    open[r] = Math.max(0, Math.min(most, counts[r]! - 2 * width, counts[r - width]!, counts[r + width]!));
  }
  return open;
}
