import { boxAround } from './box.ts';
import type { Cell } from './cell.ts';
import { noStrips, type Strips } from './strips.ts';

/**
 * What a nib draws along a freehand way: its cells at each cell of the way, each drawn cell once, in as few strips as
 * there can be, sorted by row and column. `way` is what `lineCells` gives for the pointer's moves, one after another;
 * `nib` is what `nibCells` gives.
 *
 * Each row of the nib at each cell of the way is one stretch. Sorted, stretches that meet become one strip; so the work
 * grows with the nib's height and not with its area.
 */
export function strokeStrips(way: readonly Cell[], code: number, nib: readonly Cell[]): Strips {
  const stretches = stretchesOf(nib);
  if (way.length === 0 || stretches.length === 0) return noStrips;
  const ways = boxAround(way);
  const nibs = boxAround(nib);
  const top = ways.top + nibs.top;
  const left = ways.left + nibs.left;
  const width = ways.right + nibs.right - left + 1;
  const longest = nibs.right - nibs.left + 1;

  // Row, first column and count in one number, so that sorting needs no comparison of ours.
  const keys = new Float64Array(way.length * stretches.length);
  let at = 0;
  for (const { row, column } of way) {
    for (const each of stretches) {
      const place = (row + each.row - top) * width + column + each.column - left;
      keys[at++] = place * (longest + 1) + each.count;
    }
  }
  keys.sort();

  const strips: number[] = [];
  let stripRow = -1;
  let end = -1;
  for (const key of keys) {
    const place = Math.floor(key / (longest + 1));
    const row = Math.floor(place / width);
    const from = place - row * width;
    const to = from + key - place * (longest + 1);
    if (row !== stripRow || from > end) {
      strips.push(row + top, from + left, to - from, code);
      stripRow = row;
      end = to;
    } else if (to > end) {
      strips[strips.length - 2]! += to - end;
      end = to;
    }
  }
  return new Int32Array(strips);
}

/** So many cells side by side from this one on. */
interface Stretch extends Cell {
  readonly count: number;
}

function stretchesOf(nib: readonly Cell[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (const { row, column } of nib) {
    const last = stretches.at(-1);
    if (last && last.row === row && last.column + last.count === column) {
      stretches[stretches.length - 1] = { ...last, count: last.count + 1 };
    } else stretches.push({ row, column, count: 1 });
  }
  return stretches;
}
