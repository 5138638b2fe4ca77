/**
 * Entries of a long list in columns: each with its head in bold, a box to tick, and lines that are broken between its parts, never
 * inside one, and go on under the text rather than under the box, so that the eye finds the next entry by its box. They take the
 * fewest pages, and are then spread over these evenly.
 */
import { textWidthMm, wrapText } from './faces/measure-text.ts';
import { label } from './label.ts';
import type { Face, Item } from './page.ts';
import type { Area } from './papers.ts';
import { inks, LEADING, sizes } from './style.ts';

const SIZE_MM = sizes.body * 0.95;
const LINE_MM = SIZE_MM * LEADING;
/** A symbol fills its em and is drawn larger than figures, so that it is told from others; it reaches as far above them as below. */
const SYMBOL_MM = SIZE_MM * 1.2;
const SYMBOL_BELOW_MM = (SYMBOL_MM - SIZE_MM * 0.71) / 2;
const BOX_MM = 2.9;
const INDENT_MM = 5.2;
const COLUMN_GAP_MM = 8;
const AFTER_MM = 1.4;
const AFTER_GROUP_MM = 3.6;

/** A text of one face; what is set without a space before it belongs to the one before. */
export interface EntryText {
  readonly text: string;
  readonly face?: Face;
}

export interface Entry {
  readonly head: string;
  /** What stays together on a line: a count with its yarn and cords. Between two of them is a space. */
  readonly parts: readonly (readonly EntryText[])[];
  /** Whether each part begins a line; the first one goes on behind the head. */
  readonly partByLine?: boolean;
  /** More space comes behind the last entry of a group. */
  readonly endsGroup: boolean;
}

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
  let best: Item[][] | null = null;
  for (let columns = 1; columns <= mostColumns; columns++) {
    const pages = spread(entries, area, tops, columns);
    if (!best || pages.length < best.length) best = pages;
  }
  return best!;
}

/** As few pages as they take, each filled about as far as the others. */
function spread(entries: readonly Entry[], area: Area, tops: Tops, columns: number): Item[][] {
  const width = (area.width - (columns - 1) * COLUMN_GAP_MM) / columns;
  const blocks = entries.map((entry) => ({ entry, lines: linesOf(entry, width - INDENT_MM) }));
  const set = (bottom: number) => setTo(blocks, area, tops, columns, bottom);
  const full = area.y + area.height;
  const fewest = set(full).length;
  // The lowest bottom that takes no further page, to half a line.
  let [low, high] = [Math.max(tops.first, tops.later) + 4 * LINE_MM, full];
  while (high - low > LINE_MM / 2) {
    const middle = (low + high) / 2;
    if (set(middle).length > fewest) low = middle;
    else high = middle;
  }
  return set(high);
}

interface Block {
  readonly entry: Entry;
  readonly lines: readonly (readonly EntryText[])[];
}

/** An entry is broken over columns only where it is longer than a whole one. */
function setTo(blocks: readonly Block[], area: Area, tops: Tops, columns: number, bottom: number): Item[][] {
  const width = (area.width - (columns - 1) * COLUMN_GAP_MM) / columns;
  const pages: Item[][] = [[]];
  let column = 0;
  let y = tops.first;
  const topNow = () => (pages.length === 1 ? tops.first : tops.later);
  const nextColumn = () => {
    column = (column + 1) % columns;
    if (column === 0) pages.push([]);
    y = topNow();
  };
  for (const { entry, lines } of blocks) {
    if (y + lines.length * LINE_MM > bottom && y > topNow()) nextColumn();
    lines.forEach((line, i) => {
      if (y + LINE_MM > bottom && y > topNow()) nextColumn();
      const x = area.x + column * (width + COLUMN_GAP_MM);
      y += LINE_MM;
      pages.at(-1)!.push(...(i === 0 ? [tickBox(x, y)] : []), ...drawn(line, x + INDENT_MM, y, i === 0));
    });
    y += entry.endsGroup ? AFTER_GROUP_MM : AFTER_MM;
  }
  return pages;
}

/** The head and the parts as lines of texts, each text with the space before it. */
function linesOf({ head, parts, partByLine }: Entry, width: number): EntryText[][] {
  const lines: EntryText[][] = [[{ text: head, face: 'sans-bold' }]];
  let room = width - widthOf(lines[0]!);
  const spaceMm = textWidthMm(' ', 'sans', SIZE_MM);
  parts.forEach((part, i) => {
    const partMm = widthOf(part);
    const goesOn = i === 0 || !partByLine;
    if (goesOn && spaceMm + partMm <= room) {
      lines.at(-1)!.push(...spaced(part));
      room -= spaceMm + partMm;
    } else if (partMm <= width) {
      lines.push([...part]);
      room = width - partMm;
    } else {
      // A single part that is longer than a line: in one face, as names are.
      const broken = wrapText(part.map(({ text }) => text).join(''), 'sans', SIZE_MM, width);
      lines.push(...broken.map((text) => [{ text }]));
      room = width - textWidthMm(broken.at(-1)!, 'sans', SIZE_MM);
    }
  });
  return lines;
}

function spaced([first, ...rest]: readonly EntryText[]): EntryText[] {
  return first ? [{ ...first, text: ` ${first.text}` }, ...rest] : [];
}

function emOf(face: Face): number {
  return face === 'symbols' ? SYMBOL_MM : SIZE_MM;
}

function widthOf(texts: readonly EntryText[]): number {
  return texts.reduce((sum, { text, face = 'sans' }) => sum + textWidthMm(text, face, emOf(face)), 0);
}

/** Neighbours of one face are one text; a text that goes on without a space is told so. */
function drawn(line: readonly EntryText[], x: number, y: number, begins: boolean): Item[] {
  const items: Item[] = [];
  let at = x;
  for (const { text, face = 'sans' } of merged(line)) {
    const shown = text.trimStart();
    if (shown !== text) at += textWidthMm(' ', face, SIZE_MM);
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
  const y = baseline - SIZE_MM * 0.36 - BOX_MM / 2;
  return { kind: 'box', x, y, width: BOX_MM, height: BOX_MM, radius: 0.5, stroke: inks.soft, strokeMm: 0.22 };
}
