/**
 * What a tool has drawn, before it becomes an edit: strips of cells side by side in one row, each of one code. Four
 * numbers a strip, `row, column, count, code` (from 0), one after the other. Strips may reach beyond the chart and may
 * overlap; a later one lies over an earlier one. Symmetry copies strips, borders repeat them, and `paintStrips` turns
 * them into the edit.
 */
import type { Paint } from '../../design/edits.ts';
import type { Cell, ChartSize } from './cell.ts';

export type Strips = Int32Array;

export const noStrips: Strips = new Int32Array(0);

/** Single cells of one code, in the order given. */
export function stripsOfCells(cells: readonly Cell[], code: number): Strips {
  const strips = new Int32Array(cells.length * 4);
  for (const [i, { row, column }] of cells.entries()) strips.set([row, column, 1, code], i * 4);
  return strips;
}

/** The strips of several drawings as one, the last one on top. */
export function joinStrips(drawn: readonly Strips[]): Strips {
  const joined = new Int32Array(drawn.reduce((sum, each) => sum + each.length, 0));
  let at = 0;
  for (const each of drawn) {
    joined.set(each, at);
    at += each.length;
  }
  return joined;
}

/** The edit that draws strips on a layer; what lies outside the chart is left out. Null where nothing lies inside. */
export function paintStrips(layer: string, strips: Strips, { columns, rows }: ChartSize): Paint | null {
  // Counted first and then put in place: sorted by row, as an edit wants them; within a row the order stays, so that
  // the last strip lies on top.
  const nextInRow = new Uint32Array(rows + 1);
  for (let i = 0; i < strips.length; i += 4) if (isSeen(i)) nextInRow[strips[i]! + 1]!++;
  for (let row = 0; row < rows; row++) nextInRow[row + 1]! += nextInRow[row]!;
  if (nextInRow[rows] === 0) return null;
  const runs = new Uint16Array(nextInRow[rows]! * 4);
  for (let i = 0; i < strips.length; i += 4) {
    if (!isSeen(i)) continue;
    const from = Math.max(0, strips[i + 1]!);
    const at = nextInRow[strips[i]!]!++ * 4;
    runs[at] = strips[i]!;
    runs[at + 1] = from;
    runs[at + 2] = Math.min(columns, strips[i + 1]! + strips[i + 2]!) - from;
    runs[at + 3] = strips[i + 3]!;
  }
  return { kind: 'paint', layer, runs };

  function isSeen(i: number): boolean {
    const isInRow = strips[i]! >= 0 && strips[i]! < rows;
    const isInColumn = strips[i + 1]! < columns && strips[i + 1]! + strips[i + 2]! > 0;
    return isInRow && isInColumn && strips[i + 2]! > 0;
  }
}
