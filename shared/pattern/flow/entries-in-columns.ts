/**
 * Entries of a long list in columns: each with its head in bold, a box to tick, and lines that go on under the text rather than
 * under the box, so that the eye finds the next entry by its box. They take the fewest pages, and are then spread over these evenly.
 */
import { arrow } from '../chart-pages/chart-block.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { inks } from '../page/style.ts';
import {
  type Entry,
  type EntryLine,
  type EntrySizes,
  type EntryText,
  entryLines,
  entrySizes,
} from './entry-lines.ts';

/** Of a tick box, and of an entry's text from its box, in ems of the text. */
const BOX = 0.925;
const INDENT = 1.66;
const COLUMN_GAP_MM = 8;
const AFTER_MM = 1.4;
const AFTER_GROUP_MM = 3.6;

/** Where entries begin on the first page and on later ones. */
export interface Tops {
  readonly first: number;
  readonly later: number;
}

export interface EntryPages {
  readonly area: Area;
  readonly tops: Tops;
  readonly mostColumns: number;
  /** Em of what is read in the copy. */
  readonly bodyMm: number;
}

/** Items for each page, for whichever number of columns, at most `mostColumns`, takes the fewest pages. */
export function entriesInColumns(
  entries: readonly Entry[],
  { area, tops, mostColumns, bodyMm }: EntryPages,
): Item[][] {
  const sizes = entrySizes(bodyMm);
  const indentMm = sizes.textMm * INDENT;
  const measured = entries.map((entry) => ({ entry, linesIn: entryLines(entry, sizes) }));
  let best: { readonly setting: Setting; readonly pages: number } | null = null;
  for (let columns = 1; columns <= mostColumns; columns++) {
    const widthMm = (area.width - (columns - 1) * COLUMN_GAP_MM) / columns;
    const blocks = measured.map(({ entry, linesIn }) => ({ entry, lines: linesIn(widthMm - indentMm) }));
    const setting = { blocks, columns, widthMm, tops, sizes, bottom: area.y + area.height };
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
  readonly sizes: EntrySizes;
  readonly bottom: number;
}

/** With the lowest bottom that takes no further page, to half a line. */
function spread(setting: Setting, pages: number): Setting {
  const { first, later } = setting.tops;
  const { lineMm } = setting.sizes;
  let low = Math.max(first, later) + 4 * lineMm;
  let high = setting.bottom;
  while (high - low > lineMm / 2) {
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
function place({ blocks, columns, tops, bottom, sizes: { lineMm } }: Setting, placed: Placing): void {
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
    if (y + length * lineMm > bottom && y > top()) nextColumn();
    for (let line = 0; line < length; line++) {
      if (y + lineMm > bottom && y > top()) nextColumn();
      y += lineMm;
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
    const { sizes } = setting;
    if (line === 0) pages[page].push(tickBox(x, y, sizes.textMm));
    pages[page].push(...drawnLine(texts, x + sizes.textMm * INDENT + indentMm, y, line === 0, sizes));
  });
  return pages;
}

/** Neighbours of one face are one text; a text that goes on without a space is told so. */
function drawnLine(
  line: readonly EntryText[],
  x: number,
  y: number,
  begins: boolean,
  { textMm, symbolMm, arrowMm, beforeArrowMm }: EntrySizes,
): Item[] {
  const items: Item[] = [];
  // A symbol reaches as far above the figures beside it as below.
  const symbolBelowMm = (symbolMm - textMm * 0.71) / 2;
  let at = x;
  for (const { text, face = 'sans', arrow: way } of merged(line)) {
    const shown = text.trimStart();
    if (shown !== text) at += textWidthMm(' ', face, textMm);
    const isFirst = items.length === 0;
    const sizeMm = face === 'symbols' ? symbolMm : textMm;
    items.push(
      label(at, face === 'symbols' ? y + symbolBelowMm : y, shown, {
        face,
        sizeMm,
        ...(begins && isFirst && { role: 'paragraph' }),
        ...(!isFirst && shown === text && { joined: true }),
      }),
    );
    at += textWidthMm(shown, face, sizeMm);
    if (way === undefined) continue;
    const [tail, point] = [at + beforeArrowMm, at + beforeArrowMm + arrowMm];
    const [from, to] = way === 'right' ? [tail, point] : [point, tail];
    const look = { stroke: inks.text, strokeMm: textMm * 0.085, cap: 'round' } as const;
    items.push({ kind: 'path', steps: arrow(from, to, y - textMm * 0.355, textMm), ...look });
    at = point;
  }
  return items;
}

function merged(line: readonly EntryText[]): EntryText[] {
  const list: (EntryText & { text: string })[] = [];
  for (const each of line) {
    const last = list.at(-1);
    if (last && last.face === each.face && !last.arrow) last.text += each.text;
    else list.push({ ...each });
  }
  return list;
}

function tickBox(x: number, baseline: number, textMm: number): Item {
  const side = textMm * BOX;
  const y = baseline - textMm * 0.36 - side / 2;
  return { kind: 'box', x, y, width: side, height: side, radius: 0.5, stroke: inks.soft, strokeMm: 0.22 };
}
