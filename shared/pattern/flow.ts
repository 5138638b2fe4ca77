/**
 * Text, headings, lists and tables set one below the other, going on over as many pages as they need. A table repeats its
 * heads on each page; nothing is cut, and nothing reaches below the body. Each is told as what it is to those who are read to.
 */

import { joinedLines, textWidthMm, wrapText } from './faces/measure-text.ts';
import { type LabelStyle, label } from './label.ts';
import type { Face, GroupItem, Item, Structure } from './page.ts';
import type { Draft } from './page-foot.ts';
import { FIRST_HEAD_MM, firstHead, LATER_HEAD_MM, laterHead } from './page-head.ts';
import { type Area, bodyOf } from './papers.ts';
import type { PatternContext } from './pattern-input.ts';
import { plainItems } from './plain-items.ts';
import { inks, LEADING, ruleMm, sizes } from './style.ts';
import { footWords } from './words/foot-words.ts';

/** What all pages of a flow share. */
export type FlowContext = Pick<PatternContext, 'sheet' | 'accent'> & {
  readonly copy: Pick<PatternContext['copy'], 'language'>;
};

export interface Flow {
  readonly area: Area;
  /** Of the marks of lists. */
  readonly accent: string;
  /** Where the next thing goes. */
  y: number;
  /** Where matter begins on the pages after the first. */
  readonly laterTop: number;
  nextPage(): void;
  /** Goes to a new page where less than this is left. */
  need(heightMm: number): void;
  put(...items: Item[]): void;
  /** Begins an entry of a list: of the one before, unless something else was put since. */
  beginEntry(): void;
  /** Puts a part of the entry that was begun last. */
  putInEntry(structure: 'mark' | 'body', item: Item): void;
  /** A name for a group that may go on over pages. */
  newId(): string;
  /** The pages so far. */
  drafts(): Draft[];
}

/** `title` stands large on the first page, and small with 'continued' on the others. */
export function newFlow({ sheet, accent, copy }: FlowContext, title: string): Flow {
  const later = footWords[copy.language].continued(title);
  const area = bodyOf(sheet);
  const pages: Item[][] = [];
  let ids = 0;
  let list: string | null = null;
  let entry = '';
  const flow: Flow = {
    area,
    accent,
    y: 0,
    laterTop: area.y + LATER_HEAD_MM,
    nextPage: begin,
    need(heightMm) {
      if (flow.y + heightMm > area.y + area.height && flow.y > topOf(pages.length)) begin();
    },
    put(...items) {
      list = null;
      pages.at(-1)!.push(...items);
    },
    beginEntry() {
      list ??= flow.newId();
      entry = flow.newId();
    },
    putInEntry(structure, item) {
      const part = group(structure, [item], `${entry} ${structure}`);
      pages.at(-1)!.push(group('list', [group('entry', [part], entry)], list!));
    },
    newId: () => `${title} ${++ids}`,
    drafts: () => pages.map((items, i) => ({ sheet, title: i === 0 ? title : later, items })),
  };
  const topOf = (page: number) => area.y + (page <= 1 ? FIRST_HEAD_MM : LATER_HEAD_MM);
  function begin() {
    pages.push([]);
    flow.y = topOf(pages.length);
    const head = pages.length === 1 ? firstHead(area, title, accent) : laterHead(area, later, accent);
    pages.at(-1)!.push(...head);
  }
  begin();
  return flow;
}

function group(structure: Structure, items: readonly Item[], id: string): GroupItem {
  return { kind: 'group', structure, items, id };
}

/** Stays together with what follows. */
export function heading(flow: Flow, text: string): void {
  flow.need(24);
  flow.y += 4.5 + sizes.heading;
  flow.put(label(flow.area.x, flow.y, text, { face: 'serif-bold', sizeMm: sizes.heading, role: 'heading' }));
  flow.y += 3;
}

export interface ParagraphStyle {
  readonly face?: Face;
  readonly sizeMm?: number;
  readonly color?: string;
  /** Space below, in mm. */
  readonly after?: number;
  /** From the left edge of the body. */
  readonly indent?: number;
  readonly width?: number;
  /** Stands in the indent of the first line: a number, a dash. Paragraphs with marks one below the other are a list. */
  readonly mark?: string;
}

export function paragraph(flow: Flow, text: string, style: ParagraphStyle = {}): void {
  const { face = 'sans', sizeMm = sizes.body, color = inks.text, after = 2, indent = 0, mark } = style;
  const width = (style.width ?? flow.area.width) - indent;
  const x = flow.area.x + indent;
  const leading = sizeMm * LEADING;
  const lines = wrapText(text, face, sizeMm, width);
  const joined = joinedLines(text, lines);
  if (mark) flow.beginEntry();
  lines.forEach((line, i) => {
    flow.need(leading);
    flow.y += leading;
    const look: LabelStyle = { face, sizeMm, color, ...(joined[i] && { joined: true }) };
    if (!mark) flow.put(label(x, flow.y, line, { ...look, ...(i === 0 && { role: 'paragraph' }) }));
    else {
      const markLook = { ...look, face: 'serif-bold', color: flow.accent } as const;
      if (i === 0) flow.putInEntry('mark', label(flow.area.x, flow.y, mark, markLook));
      flow.putInEntry('body', label(x, flow.y, line, look));
    }
  });
  flow.y += after;
}

/** Text, or a drawing; `alt` is what it says, in words, and is left out where it only decorates. */
export type TableCell = string | { readonly draw: (x: number, y: number) => Item[]; readonly alt?: string };

export interface TableColumn {
  readonly head: string;
  /**
   * In mm. The one column without a width takes what is left; it names the rows, and is read as their head.
   */
  readonly width?: number;
  readonly align?: 'left' | 'right';
}

const CELL_GAP = 3;

export function table(
  flow: Flow,
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
): void {
  const set: TableSet = { flow, columns, widths: widthsOf(columns, flow.area.width), id: flow.newId() };
  const heads = columns.map(({ head }) => head);
  tableRow(set, heads, 'head');
  for (const row of rows) {
    const height = rowHeight(row, set.widths, 'row');
    const before = flow.y;
    flow.need(height);
    if (flow.y < before) tableRow(set, heads, 'again');
    tableRow(set, row, 'row');
  }
  flow.y += 2;
}

interface TableSet {
  readonly flow: Flow;
  readonly columns: readonly TableColumn[];
  readonly widths: readonly number[];
  readonly id: string;
}

/** Least width of the column that takes what is left: very wide figures are wrapped instead. */
const REST_MM = 30;

function widthsOf(columns: readonly TableColumn[], whole: number): number[] {
  const fixed = columns.reduce((sum, { width = 0 }) => sum + width, 0);
  const share = Math.min(1, (whole - REST_MM) / fixed);
  return columns.map(({ width }) => (width === undefined ? whole - fixed * share : width * share));
}

const headLook = { sizeMm: sizes.small, color: inks.soft, above: 0.6, below: 1.4 } as const;

/** 'again': the heads on a later page, which were read on the first one. */
const rowLook = {
  head: headLook,
  again: headLook,
  row: { sizeMm: sizes.body * 0.97, color: inks.text, above: 1.1, below: 1.7 },
} as const;

type RowKind = keyof typeof rowLook;

function linesOf(cell: TableCell, width: number, kind: RowKind): string[] {
  return typeof cell === 'string' ? wrapText(cell, 'sans', rowLook[kind].sizeMm, width - CELL_GAP) : [''];
}

function rowHeight(cells: readonly TableCell[], widths: readonly number[], kind: RowKind): number {
  const { sizeMm, above, below } = rowLook[kind];
  const lines = Math.max(...cells.map((cell, i) => linesOf(cell, widths[i]!, kind).length), 1);
  return above + lines * sizeMm * LEADING + below;
}

function tableRow({ flow, columns, widths, id }: TableSet, cells: readonly TableCell[], kind: RowKind): void {
  const height = rowHeight(cells, widths, kind);
  flow.need(height + (kind === 'row' ? 0 : 14));
  const depth = Math.max(...cells.map((cell, i) => linesOf(cell, widths[i]!, kind).length));
  let x = flow.area.x;
  const drawn = cells.map((cell, i): GroupItem => {
    const column = { ...columns[i]!, x, width: widths[i]!, isLast: i === cells.length - 1 };
    x += widths[i]!;
    const items =
      typeof cell === 'string'
        ? cellText(cell, column, flow.y, depth, kind)
        : cellDrawing(cell, column.x, flow.y + rowLook[kind].above);
    return { kind: 'group', structure: structureOf(columns[i]!, kind), items };
  });
  flow.y += height;
  if (kind === 'again') flow.put(...drawn.flatMap(({ items }) => items));
  else flow.put(group('table', [{ kind: 'group', structure: 'row', items: drawn }], id));
  flow.put({
    kind: 'rule',
    x1: flow.area.x,
    y1: flow.y,
    x2: flow.area.x + flow.area.width,
    y2: flow.y,
    widthMm: kind === 'row' ? ruleMm.thin : 0.25,
    color: kind === 'row' ? inks.hair : inks.soft,
  });
}

function structureOf({ width }: TableColumn, kind: RowKind): Structure {
  return kind === 'head' ? 'column-head' : width === undefined ? 'row-head' : 'cell';
}

interface PlacedColumn extends TableColumn {
  readonly x: number;
  readonly width: number;
  readonly isLast: boolean;
}

function cellText(
  text: string,
  { x, width, align = 'left', isLast }: PlacedColumn,
  top: number,
  depth: number,
  kind: RowKind,
): Item[] {
  const { sizeMm, color, above } = rowLook[kind];
  const lines = linesOf(text, width, kind);
  const joined = joinedLines(text, lines);
  // Heads stand on the rule below them, however many lines they have.
  const from = kind === 'row' ? 0 : depth - lines.length;
  const at = align === 'right' ? x + width - (isLast ? 0 : CELL_GAP) : x;
  return lines.map((line, i) =>
    label(at, top + above + (from + i) * sizeMm * LEADING + sizeMm * 1.08, line, {
      sizeMm,
      color,
      align,
      ...(joined[i] && { joined: true }),
      ...(kind === 'again' && { role: 'again' }),
    }),
  );
}

function cellDrawing({ draw, alt }: Exclude<TableCell, string>, x: number, y: number): Item[] {
  const items = draw(x, y);
  return alt ? [{ kind: 'figure', alt, items: plainItems(items) }] : items;
}

/** The width that a column of right-aligned figures needs, with its head on at most two lines. */
export function figureWidth(head: string, figures: readonly string[]): number {
  const longestWord = Math.max(...head.split(' ').map((word) => textWidthMm(word, 'sans', sizes.small)));
  const longest = Math.max(0, ...figures.map((each) => textWidthMm(each, 'sans', rowLook.row.sizeMm)));
  return Math.max(longestWord, longest, 9) + CELL_GAP + 2;
}
