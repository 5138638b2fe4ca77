/**
 * The key: what stands for which yarn, and how many knots of it the whole chart has. It lists every yarn that the
 * chart uses, in as many columns as its names allow; names too long for their column end in an ellipsis.
 */

import type { Chart } from '../chart/chart.ts';
import { BARE, codeOf } from '../design/codes.ts';
import type { Yarn } from '../design/schema.ts';
import { bareMark } from './chart-block.ts';
import { grouped } from './counted.ts';
import { fitText, textWidthMm } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { CellsItem, Item } from './page.ts';
import { inks, sizes } from './style.ts';

export interface KeyEntry {
  readonly code: number;
  readonly name: string;
  readonly count: number;
}

/** The yarns of the chart in the design's order, then the bare cells if there are any. */
export function keyEntries(yarns: readonly Pick<Yarn, 'id' | 'name'>[], { cells }: Chart): KeyEntry[] {
  const counts = new Uint32Array(256);
  for (const code of cells) counts[code]!++;
  const tied = yarns.map(({ id, name }) => ({ code: codeOf(id), name, count: counts[codeOf(id)]! }));
  return [...tied, { code: BARE, name: 'Bare cord, no knot', count: counts[BARE]! }].filter(
    ({ count }) => count > 0,
  );
}

export interface KeyLayout {
  readonly columns: number;
  readonly columnWidth: number;
  readonly lines: number;
  readonly height: number;
}

const LINE_MM = 5.4;
const HEADING_MM = 6.4;
const SWATCH_MM = 4.2;
const NAME_MM = sizes.small * 1.08;
/** Narrower columns would leave too little of a name. */
const NARROWEST_MM = 33;

/** How the entries fall into columns within a width, in mm. */
export function layOutKey(entries: readonly KeyEntry[], width: number): KeyLayout {
  const widest = entries.reduce((most, entry) => Math.max(most, entryWidth(entry)), 0) + 5;
  const whole = Math.floor(width / widest);
  const narrow = Math.floor(width / NARROWEST_MM);
  const few = 4;
  // Whole names where that takes few lines, else as many columns as stay legible.
  const most = whole >= 1 && Math.ceil(entries.length / whole) <= few ? whole : Math.max(whole, narrow);
  const lines = Math.ceil(entries.length / Math.max(1, Math.min(most, entries.length)));
  const columns = Math.ceil(entries.length / Math.max(lines, 1));
  const columnWidth = Math.min(width / Math.max(columns, 1), Math.max(widest, NARROWEST_MM));
  return { columns, columnWidth, lines, height: HEADING_MM + lines * LINE_MM };
}

export function drawKey(
  entries: readonly KeyEntry[],
  layout: KeyLayout,
  x: number,
  y: number,
  cellInks: CellsItem['inks'],
): Item[] {
  return [
    label(x, y + sizes.heading * 0.8, 'Key', { face: 'serif-bold', sizeMm: sizes.heading, role: 'heading' }),
    ...entries.flatMap((entry, i) => {
      const left = x + Math.floor(i / layout.lines) * layout.columnWidth;
      const top = y + HEADING_MM + (i % layout.lines) * LINE_MM;
      return drawEntry(entry, left, top, layout.columnWidth, cellInks);
    }),
  ];
}

function drawEntry(
  entry: KeyEntry,
  x: number,
  y: number,
  width: number,
  cellInks: CellsItem['inks'],
): Item[] {
  const count = grouped(entry.count);
  const nameX = x + SWATCH_MM + 1.6;
  const room = width - SWATCH_MM - 1.6 - textWidthMm(count, 'sans', NAME_MM) - 4;
  const name = fitText(entry.name, 'sans', NAME_MM, room);
  const baseline = y + SWATCH_MM / 2 + NAME_MM * 0.355;
  const countX = nameX + textWidthMm(name, 'sans', NAME_MM) + 1.4;
  return [
    ...drawSwatch(entry.code, x, y, SWATCH_MM, cellInks),
    label(nameX, baseline, name, { sizeMm: NAME_MM, role: 'paragraph' }),
    label(countX, baseline, count, { sizeMm: NAME_MM, color: inks.soft }),
  ];
}

/** One cell as it stands in the chart. */
export function drawSwatch(
  code: number,
  x: number,
  y: number,
  size: number,
  cellInks: CellsItem['inks'],
): Item[] {
  const frame = { kind: 'box', x, y, width: size, height: size, stroke: inks.soft, strokeMm: 0.18 } as const;
  const ink = cellInks[code];
  if (code === BARE || !ink) {
    const steps = bareMark(x + size / 2, y + size / 2, size);
    return [frame, { kind: 'path', steps, stroke: inks.soft, strokeMm: 0.2 }];
  }
  const cell = { kind: 'cells', x, y, cellWidth: size, cellHeight: size, columns: 1, rows: 1 } as const;
  return [{ ...cell, codes: Uint8Array.of(code), inks: { [code]: ink }, symbolMm: size }, frame];
}

function entryWidth({ name, count }: KeyEntry): number {
  return SWATCH_MM + 3 + textWidthMm(name, 'sans', NAME_MM) + textWidthMm(grouped(count), 'sans', NAME_MM);
}
