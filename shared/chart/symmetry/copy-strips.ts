/**
 * What was drawn and its images under a symmetry. The strips as drawn come last, so they lie on top; where images
 * overlap one another and not them, which lies on top is not said.
 *
 * Mirrored, half-turned and repeated, a strip stays one strip. Where cords change places with rows it becomes a column
 * of cells; such an image is drawn on a sheet and read off as strips again, so that a filled area stays few strips.
 */
import type { ChartSize } from '../tools/cell.ts';
import { joinStrips, type Strips } from '../tools/strips.ts';
import { type CellMap, imageOf } from './cell-map.ts';
import { pointElementsOf } from './elements.ts';
import { repeatStrips } from './repeat-strips.ts';
import { addStrips, drawnAs, newSheet } from './sheet.ts';
import { soundSymmetry } from './sound-symmetry.ts';
import type { Symmetry } from './symmetry.ts';

/** Images may reach beyond the chart, as strips may. The same array where nothing is copied. */
export function copyStrips(strips: Strips, symmetry: Symmetry, size: ChartSize): Strips {
  if ((symmetry.point === 'none' && symmetry.repeat === 'none') || strips.length === 0) return strips;
  const sound = soundSymmetry(symmetry, size);
  const maps = pointElementsOf(sound);
  if (sound.repeat !== 'none') return joinStrips([repeatStrips(strips, maps, sound, size), strips]);
  const images = maps
    .slice(0, -1)
    .map((map) => (map.rr === 0 ? turnedStrips(strips, map, size) : straightStrips(strips, map)));
  return joinStrips([...images, strips]);
}

function straightStrips(strips: Strips, { rr, r0, cc, c0 }: CellMap): Strips {
  const image = new Int32Array(strips.length);
  for (let i = 0; i < strips.length; i += 4) {
    const count = strips[i + 2]!;
    const first = cc * strips[i + 1]! + c0;
    image[i] = rr * strips[i]! + r0;
    image[i + 1] = cc === 1 ? first : first - count + 1;
    image[i + 2] = count;
    image[i + 3] = strips[i + 3]!;
  }
  return image;
}

/** The image under a map that brings rows to columns, cut at the chart's edge. */
function turnedStrips(strips: Strips, map: CellMap, size: ChartSize): Strips {
  const box = boxOf(strips, map, size);
  if (!box) return new Int32Array(0);
  const sheet = newSheet(box.right - box.left + 1, box.bottom - box.top + 1);
  for (let i = 0; i < strips.length; i += 4) {
    const column = map.cr * strips[i]! + map.c0;
    if (column < box.left || column > box.right) continue;
    const one = map.rc * strips[i + 1]! + map.r0;
    const other = one + map.rc * (strips[i + 2]! - 1);
    const top = Math.max(box.top, Math.min(one, other));
    const bottom = Math.min(box.bottom, Math.max(one, other));
    const drawn = drawnAs(strips[i + 3]!);
    let at = (top - box.top) * sheet.columns + column - box.left;
    for (let row = top; row <= bottom; row++, at += sheet.columns) sheet.cells[at] = drawn;
  }
  const image: number[] = [];
  for (let row = 0; row < sheet.rows; row++) {
    const cells = sheet.cells.subarray(row * sheet.columns, (row + 1) * sheet.columns);
    addStrips(image, cells, box.top + row, box.left);
  }
  return Int32Array.from(image);
}

interface Box {
  top: number;
  right: number;
  bottom: number;
  left: number;
}

/** The rows and columns of the chart (first and last) that the strips' image lies in; null where in none. */
function boxOf(strips: Strips, map: CellMap, { columns, rows }: ChartSize): Box | null {
  const box: Box = { top: rows, right: -1, bottom: -1, left: columns };
  for (let i = 0; i < strips.length; i += 4) {
    const row = strips[i]!;
    const from = strips[i + 1]!;
    const one = imageOf({ row, column: from }, map);
    const other = imageOf({ row, column: from + strips[i + 2]! - 1 }, map);
    box.top = Math.min(box.top, one.row, other.row);
    box.bottom = Math.max(box.bottom, one.row, other.row);
    box.left = Math.min(box.left, one.column);
    box.right = Math.max(box.right, one.column);
  }
  box.top = Math.max(box.top, 0);
  box.left = Math.max(box.left, 0);
  box.bottom = Math.min(box.bottom, rows - 1);
  box.right = Math.min(box.right, columns - 1);
  return box.top > box.bottom || box.left > box.right ? null : box;
}
