/**
 * The flat chart: what the maker ties. Layers are looked through from the top; the first cell that is not empty
 * shows, and where every layer is empty the cord is bare.
 */
import { BARE, EMPTY } from '../design/codes.ts';
import type { Design, Layer } from '../design/design.ts';
import type { StartCorner } from '../design/schema.ts';

/** `cells[row * columns + column]` is a yarn's code or BARE, never EMPTY. Rows and columns from 0. */
export interface Chart {
  readonly columns: number;
  readonly rows: number;
  readonly startCorner: StartCorner;
  readonly cells: Uint8Array;
}

export function flatten(design: Design): Chart {
  const { columns, rows, startCorner } = design;
  const cells = new Uint8Array(columns * rows);
  flattenRows(
    cells,
    design,
    Array.from({ length: rows }, (_, row) => row),
  );
  return { columns, rows, startCorner, cells };
}

/** The chart of `design`, where all but some rows (from 0) are as in `chart`; both are of one size. */
export function reflatten(chart: Chart, design: Design, rows: readonly number[]): Chart {
  const cells = chart.cells.slice();
  flattenRows(cells, design, rows);
  return { ...chart, startCorner: design.startCorner, cells };
}

/** True where row `row` (from 0) is tied left to right. */
export function goesRight(startCorner: StartCorner, row: number): boolean {
  return (startCorner === 'top-left') === (row % 2 === 0);
}

/**
 * From the top down, and only where nothing has shown yet; a row that is full needs no look further down. Four cells are
 * looked at as one word, without branches that depend on the cells: that is what makes twelve full layers quick.
 */
function flattenRows(cells: Uint8Array, { columns, layers }: Design, rows: readonly number[]): void {
  const visible = layers.filter((layer: Layer) => layer.visible).reverse();
  const words = new Int32Array(Math.ceil(columns / 4));
  const line = new Uint8Array(words.buffer, 0, columns);
  for (const r of rows) {
    words.fill(0);
    let isOpen = true;
    for (let i = 0; isOpen && i < visible.length; i++)
      isOpen = showThrough(words, columns, visible[i]!.rows[r]!);
    if (isOpen) for (let c = 0; c < columns; c++) if (line[c] === EMPTY) line[c] = BARE;
    cells.set(line, r * columns);
  }
}

/** Puts a sheet's cells where a row of words is still empty; true where any of it is empty afterwards. */
function showThrough(words: Int32Array, columns: number, sheet: Uint8Array): boolean {
  const aligned = sheet.byteOffset % 4 === 0 ? sheet : sheet.slice();
  const whole = columns >> 2;
  const below = new Int32Array(aligned.buffer, aligned.byteOffset, whole);
  let isOpen = 0;
  for (let i = 0; i < whole; i++) {
    const shown = words[i]! | (below[i]! & emptyBytes(words[i]!));
    words[i] = shown;
    isOpen |= emptyBytes(shown);
  }
  for (let c = whole * 4; c < columns; c++) {
    const shift = (c & 3) * 8;
    if (((words[whole]! >>> shift) & 255) === EMPTY) words[whole] = words[whole]! | (sheet[c]! << shift);
    if (((words[whole]! >>> shift) & 255) === EMPTY) isOpen = 1;
  }
  return isOpen !== 0;
}

/** All bits of those bytes of a word that are 0, and none of the others. */
function emptyBytes(word: number): number {
  const low = 0x7f7f7f7f;
  const highBits = ~(((word & low) + low) | word | low);
  return Math.imul(highBits >>> 7, 255);
}
