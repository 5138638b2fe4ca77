import type { Paint } from '../../design/edits.ts';
import type { Cell, ChartSize } from './cell.ts';

/** The edit that fills the rectangle between two corners; what lies outside the chart is left out. */
export function paintRectangle(layer: string, code: number, a: Cell, b: Cell, size: ChartSize): Paint | null {
  const left = Math.max(0, Math.min(a.column, b.column));
  const right = Math.min(size.columns - 1, Math.max(a.column, b.column));
  const top = Math.max(0, Math.min(a.row, b.row));
  const bottom = Math.min(size.rows - 1, Math.max(a.row, b.row));
  if (left > right || top > bottom) return null;
  const runs = new Uint16Array((bottom - top + 1) * 4);
  for (let row = top; row <= bottom; row++) runs.set([row, left, right - left + 1, code], (row - top) * 4);
  return { kind: 'paint', layer, runs };
}
