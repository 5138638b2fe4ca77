/**
 * A drawing repeated over the whole chart. It is drawn once on a tile, every cell at its place within the period, and
 * the chart is covered with the tile: the work grows with what is drawn and with the chart, not with the number of
 * repeats, and what overlaps its own repeats is drawn alike in each.
 *
 * Half drop is a translation whose tile is two periods wide and holds each image twice, the second time half a period
 * lower.
 */
import type { ChartSize } from '../tools/cell.ts';
import type { Strips } from '../tools/strips.ts';
import type { CellMap } from './cell-map.ts';
import { addStrips, drawnAs, newSheet, type Sheet } from './sheet.ts';
import type { Symmetry } from './symmetry.ts';

/** All repeats of all images of `strips` under `maps`, cut at the chart's edge; the symmetry must be sound. */
export function repeatStrips(
  strips: Strips,
  maps: readonly CellMap[],
  { repeat, periodColumns, periodRows }: Symmetry,
  size: ChartSize,
): Strips {
  const drops = repeat === 'half-drop' ? 2 : 1;
  const tile = newSheet(periodColumns * drops, periodRows);
  for (const map of maps) {
    for (let drop = 0; drop < drops; drop++) {
      const r0 = map.r0 + (drop * periodRows) / 2;
      drawOnTile(tile, strips, { ...map, r0, c0: map.c0 + drop * periodColumns });
    }
  }
  return coverWith(tile, size);
}

function drawOnTile({ cells, columns, rows }: Sheet, strips: Strips, map: CellMap): void {
  for (let i = 0; i < strips.length; i += 4) {
    const drawn = drawnAs(strips[i + 3]!);
    let row = within(map.rr * strips[i]! + map.rc * strips[i + 1]! + map.r0, rows);
    let column = within(map.cr * strips[i]! + map.cc * strips[i + 1]! + map.c0, columns);
    // A strip that is longer than the tile comes back to where it began.
    for (let left = Math.min(strips[i + 2]!, map.cc === 0 ? rows : columns); left > 0; left--) {
      cells[row * columns + column] = drawn;
      row = stepped(row, map.rc, rows);
      column = stepped(column, map.cc, columns);
    }
  }
}

/** Each row of the tile is read off once, over the chart's whole width, and stands in every row that it falls on. */
function coverWith(tile: Sheet, { columns, rows }: ChartSize): Strips {
  const across = new Uint16Array(columns);
  const strips: number[][] = [];
  let total = 0;
  for (let first = 0; first < Math.min(tile.rows, rows); first++) {
    const part = tile.cells.subarray(first * tile.columns, (first + 1) * tile.columns);
    for (let c = 0; c < columns; c += tile.columns) across.set(part.subarray(0, columns - c), c);
    const inRow: number[] = [];
    addStrips(inRow, across, first, 0);
    strips.push(inRow);
    total += inRow.length * Math.ceil((rows - first) / tile.rows);
  }
  const covering = new Int32Array(total);
  let at = 0;
  strips.forEach((inRow, first) => {
    for (let row = first; row < rows; row += tile.rows) {
      covering.set(inRow, at);
      for (let i = 0; i < inRow.length; i += 4) covering[at + i] = row;
      at += inRow.length;
    }
  });
  return covering;
}

function within(value: number, period: number): number {
  return ((value % period) + period) % period;
}

/** `value` moved by -1, 0 or 1 within the period. */
function stepped(value: number, by: number, period: number): number {
  const next = value + by;
  return next === period ? 0 : next < 0 ? period - 1 : next;
}
