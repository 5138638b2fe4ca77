/**
 * Entries of a long list in columns: each with its head in bold, a box to tick, and lines that go on under the text rather than
 * under the box, so that the eye finds the next entry by its box. They take the fewest pages, and are then spread over these evenly.
 */
import {
  ENTRY_LINE_MM,
  type Entry,
  type EntryLine,
  type EntryText,
  emOf,
  entryLines,
} from './entry-lines.ts';
import { textWidthMm } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { Face, Item } from './page.ts';
import type { Area } from './papers.ts';
import { inks } from './style.ts';

const BOX_MM = 2.9;
const INDENT_MM = 5.2;
const COLUMN_GAP_MM = 8;
const AFTER_MM = 1.4;
const AFTER_GROUP_MM = 3.6;
const TEXT_MM = emOf('sans');
/** A symbol reaches as far above the figures beside it as below. */
const SYMBOL_BELOW_MM = (emOf('symbols') - TEXT_MM * 0.71) / 2;

/** Where entries begin on the first page and on later ones. */
export interface Tops {
  readonly first: number;
  readonly later: number;
}

/** Items for each page, for whichever number of columns, at most `mostColumns`, takes the fewest pages. */
export function entriesInColumns(
  entries: readonly Entry[],
  area: Area,
  tops: Tops,
  mostColumns: number,
): Item[][] {
  const measured = entries.map((entry) => ({ entry, linesIn: entryLines(entry) }));
  let best: { readonly setting: Setting; readonly pages: number } | null = null;
  for (let columns = 1; columns <= mostColumns; columns++) {
    const widthMm = (area.width - (columns - 1) * COLUMN_GAP_MM) / columns;
    const blocks = measured.map(({ entry, linesIn }) => ({ entry, lines: linesIn(widthMm - INDENT_MM) }));
    const setting = { blocks, columns, widthMm, tops, bottom: area.y + area.height };
    const pages = pagesOf(setting);
    if (!best || pages < best.pages) best = { setting, pages };
  }
  return drawn(spread(best!.setting, best!.pages), area.x);
}

interface Block {
  readonly entry: Entry;
  readonly lines: readonly EntryLine[];
}

interface Setting {
  readonly blocks: readonly Block[];
  readonly columns: number;
  readonly widthMm: number;
  readonly tops: Tops;
  readonly bottom: number;
}

/** With the lowest bottom that takes no further page, to half a line. */
function spread(setting: Setting, pages: number): Setting {
  const { first, later } = setting.tops;
  let low = Math.max(first, later) + 4 * ENTRY_LINE_MM;
  let high = setting.bottom;
  while (high - low > ENTRY_LINE_MM / 2) {
    const middle = (low + high) / 2;
    if (pagesOf({ ...setting, bottom: middle }) > pages) low = middle;
    else high = middle;
  }
  return { ...setting, bottom: high };
}

function pagesOf(setting: Setting): number {
  let pages = 1;
  place(setting, (_, __, page) => {
    pages = page + 1;
  });
  return pages;
}

/** Of one line: its block, its place in it, its page and column from 0, and its baseline. */
type Placing = (block: Block, line: number, page: number, column: number, y: number) => void;

/** An entry is broken over columns only where it is longer than a whole one. */
function place({ blocks, columns, tops, bottom }: Setting, placed: Placing): void {
  let page = 0;
  let column = 0;
  let y = tops.first;
  const top = () => (page === 0 ? tops.first : tops.later);
  const nextColumn = () => {
    column = (column + 1) % columns;
    if (column === 0) page++;
    y = top();
  };
  for (const block of blocks) {
    const { length } = block.lines;
    if (y + length * ENTRY_LINE_MM > bottom && y > top()) nextColumn();
    for (let line = 0; line < length; line++) {
      if (y + ENTRY_LINE_MM > bottom && y > top()) nextColumn();
      y += ENTRY_LINE_MM;
      placed(block, line, page, column, y);
    }
    y += block.entry.endsGroup ? AFTER_GROUP_MM : AFTER_MM;
  }
}

function drawn(setting: Setting, left: number): Item[][] {
  const pages: Item[][] = [];
  place(setting, ({ lines }, line, page, column, y) => {
    const x = left + column * (setting.widthMm + COLUMN_GAP_MM);
    const { texts, indentMm } = lines[line]!;
    pages[page] ??= [];
    if (line === 0) pages[page].push(tickBox(x, y));
    pages[page].push(...drawnLine(texts, x + INDENT_MM + indentMm, y, line === 0));
  });
  return pages;
}

/** Neighbours of one face are one text; a text that goes on without a space is told so. */
function drawnLine(line: readonly EntryText[], x: number, y: number, begins: boolean): Item[] {
  const items: Item[] = [];
  let at = x;
  for (const { text, face = 'sans' } of merged(line)) {
    const shown = text.trimStart();
    if (shown !== text) at += textWidthMm(' ', face, TEXT_MM);
    const isFirst = items.length === 0;
    const sizeMm = emOf(face);
    items.push(
      label(at, face === 'symbols' ? y + SYMBOL_BELOW_MM : y, shown, {
        face,
        sizeMm,
        ...(begins && isFirst && { role: 'paragraph' }),
        ...(!isFirst && shown === text && { joined: true }),
      }),
    );
    at += textWidthMm(shown, face, sizeMm);
  }
  return items;
}

function merged(line: readonly EntryText[]): EntryText[] {
  const list: { text: string; face: Face }[] = [];
  for (const { text, face = 'sans' } of line) {
    const last = list.at(-1);
    if (last?.face === face) last.text += text;
    else list.push({ text, face });
  }
  return list;
}

function tickBox(x: number, baseline: number): Item {
  const y = baseline - TEXT_MM * 0.36 - BOX_MM / 2;
  return { kind: 'box', x, y, width: BOX_MM, height: BOX_MM, radius: 0.5, stroke: inks.soft, strokeMm: 0.22 };
}
