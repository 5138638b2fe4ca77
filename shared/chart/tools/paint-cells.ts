import type { Paint } from '../../design/edits.ts';
import { type Cell, type ChartSize, isInside } from './cell.ts';

/** The edit that gives these cells a code; cells outside the chart are left out. Null where none is inside. */
export function paintCells(
  layer: string,
  code: number,
  cells: readonly Cell[],
  size: ChartSize,
): Paint | null {
  const places = cells
    .filter((cell) => isInside(cell, size))
    .map(({ row, column }) => row * size.columns + column)
    .sort((a, b) => a - b);
  const runs: number[] = [];
  for (let i = 0; i < places.length; i++) {
    const from = places[i]!;
    let last = from;
    const rowEnd = from - (from % size.columns) + size.columns - 1;
    while (i + 1 < places.length && places[i + 1]! <= Math.min(last + 1, rowEnd)) last = places[++i]!;
    runs.push(Math.floor(from / size.columns), from % size.columns, last - from + 1, code);
  }
  return runs.length === 0 ? null : { kind: 'paint', layer, runs: Uint16Array.from(runs) };
}
