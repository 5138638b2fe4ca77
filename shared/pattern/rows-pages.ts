/**
 * The rows in words, with a box to tick for each. They stand in one or two columns, whichever takes fewer pages. A
 * line is broken after a comma, never between a count and its yarn, and goes on under the text rather than under the
 * box, so that the eye finds the next row by its box.
 */

import type { YarnId } from '../design/codes.ts';
import { type WrittenRow, writtenRows, writtenRowText } from '../tying/written-rows.ts';
import { textWidthMm, wrapText } from './faces/measure-text.ts';
import { newFlow, paragraph } from './flow.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import type { Area } from './papers.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, LEADING, sizes } from './style.ts';

const SIZE_MM = sizes.body * 0.95;
const LINE_MM = SIZE_MM * LEADING;
const BOX_MM = 2.9;
const INDENT_MM = 5.2;
const COLUMN_GAP_MM = 8;
const AFTER_ROW_MM = 1.4;
/** Every ten rows, as the rules of the chart. */
const AFTER_TENTH_MM = 3.6;
/** Longer names would fill the rows with themselves: they are shortened, and the page says so. */
const NAME_CHARS = 28;

export function rowsPages(context: PatternContext): Draft[] {
  const flow = newFlow(context, 'Written rows');
  const names = rowNames(context);
  paragraph(flow, introduction(names.shortened), { color: inks.soft, sizeMm: sizes.note, after: 3 });
  const rows = writtenRows(context.chart, names.byId);
  const tops = { first: flow.y, later: flow.laterTop };
  const one = setInColumns(rows, flow.area, tops, 1);
  const two = setInColumns(rows, flow.area, tops, 2);
  (two.length < one.length ? two : one).forEach((items, i) => {
    if (i > 0) flow.nextPage();
    flow.put(...items);
  });
  return flow.drafts();
}

function introduction(shortened: boolean): string {
  const lift = 'Cords after ‘lift’ are lifted before the row is tied: a new yarn begins at each of them.';
  if (!shortened) return lift;
  return `${lift} Long names of yarns are shortened here, and end in the letter of their symbol.`;
}

interface RowNames {
  readonly byId: ReadonlyMap<YarnId, { readonly name: string }>;
  readonly shortened: boolean;
}

/** Names as the rows print them. Shortened ones end in their symbol's letter, so that none are alike. */
function rowNames({ design, printer }: PatternContext): RowNames {
  let shortened = false;
  const byId = new Map<YarnId, { readonly name: string }>();
  for (const { id, name, symbol } of design.yarns) {
    const letters = [...printer.printable(name)];
    if (letters.length > NAME_CHARS) shortened = true;
    const short = `${letters
      .slice(0, NAME_CHARS - 4)
      .join('')
      .trimEnd()}… ${symbol}`;
    byId.set(id, { name: letters.length > NAME_CHARS ? short : letters.join('') });
  }
  return { byId, shortened };
}

/**
 * Fills pages column by column: a list of items for each page. A row is broken over columns only where it is longer
 * than a whole one.
 */
function setInColumns(
  rows: readonly WrittenRow[],
  area: Area,
  tops: { readonly first: number; readonly later: number },
  columns: number,
): Item[][] {
  const width = (area.width - (columns - 1) * COLUMN_GAP_MM) / columns;
  const bottom = area.y + area.height;
  const pages: Item[][] = [[]];
  let column = 0;
  let y = tops.first;
  const topNow = () => (pages.length === 1 ? tops.first : tops.later);
  const nextColumn = () => {
    column = (column + 1) % columns;
    if (column === 0) pages.push([]);
    y = topNow();
  };
  for (const row of rows) {
    const lines = rowLines(row, width - INDENT_MM);
    if (y + lines.length * LINE_MM > bottom && y > topNow()) nextColumn();
    lines.forEach((line, i) => {
      if (y + LINE_MM > bottom) nextColumn();
      const x = area.x + column * (width + COLUMN_GAP_MM);
      y += LINE_MM;
      pages.at(-1)!.push(...(i === 0 ? [tickBox(x, y)] : []), ...drawLine(line, x + INDENT_MM, y));
    });
    y += row.row % 10 === 0 ? AFTER_TENTH_MM : AFTER_ROW_MM;
  }
  return pages;
}

/** A line of a row; on its first one 'Row 8, right to left:' stands out. */
interface RowLine {
  readonly head: string;
  readonly text: string;
}

function rowLines(row: WrittenRow, width: number): RowLine[] {
  const text = writtenRowText(row);
  const head = text.slice(0, text.indexOf(':') + 1);
  const lines: RowLine[] = [];
  let line: RowLine = { head, text: '' };
  let room = width - headWidth(head);
  for (const part of partsOf(text.slice(head.length))) {
    const partWidth = textWidthMm(part, 'sans', SIZE_MM);
    if (partWidth > room && (line.text !== '' || line.head !== '')) {
      lines.push(line);
      line = { head: '', text: '' };
      room = width;
    }
    if (partWidth > width) {
      const broken = wrapText(part.trim(), 'sans', SIZE_MM, width);
      lines.push(...broken.slice(0, -1).map((each) => ({ head: '', text: each })));
      line = { head: '', text: broken.at(-1)! };
      room = width - textWidthMm(line.text, 'sans', SIZE_MM);
      continue;
    }
    line = { head: line.head, text: line.text + part };
    room -= partWidth;
  }
  return [...lines, line];
}

/** What stays together: a count with its yarn and cords, and each cord to lift. */
function partsOf(text: string): string[] {
  return text.match(/[^,;]*[,;]?/g)!.filter((part) => part !== '');
}

function headWidth(head: string): number {
  return textWidthMm(head, 'sans-bold', SIZE_MM);
}

function drawLine({ head, text }: RowLine, x: number, y: number): Item[] {
  const trimmed = text.trim();
  const space = textWidthMm(' ', 'sans', SIZE_MM);
  const items: Item[] = [];
  if (head) items.push(label(x, y, head, { face: 'sans-bold', sizeMm: SIZE_MM, role: 'paragraph' }));
  if (trimmed) items.push(label(head ? x + headWidth(head) + space : x, y, trimmed, { sizeMm: SIZE_MM }));
  return items;
}

function tickBox(x: number, baseline: number): Item {
  const y = baseline - SIZE_MM * 0.36 - BOX_MM / 2;
  return { kind: 'box', x, y, width: BOX_MM, height: BOX_MM, radius: 0.5, stroke: inks.soft, strokeMm: 0.22 };
}
