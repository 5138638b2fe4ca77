/**
 * Text, headings and tables set one below the other, going on over as many pages as they need. A table repeats its
 * heads on each page; nothing is cut, and nothing reaches below the body.
 */

import { textWidthMm, wrapText } from './faces/measure-text.ts';
import { type LabelStyle, label } from './label.ts';
import type { Face, Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import { type Area, bodyOf, type Sheet } from './papers.ts';
import { inks, LEADING, ruleMm, sizes } from './style.ts';

export interface Flow {
  readonly area: Area;
  /** Where the next thing goes. */
  y: number;
  /** Where matter begins on the pages after the first. */
  readonly laterTop: number;
  nextPage(): void;
  /** Goes to a new page where less than this is left. */
  need(heightMm: number): void;
  put(...items: Item[]): void;
  /** The pages so far. */
  drafts(): Draft[];
}

/** `title` stands large on the first page, and small with 'continued' on the others. */
export function newFlow(sheet: Sheet, title: string): Flow {
  const area = bodyOf(sheet);
  const pages: Item[][] = [];
  const flow: Flow = {
    area,
    y: 0,
    laterTop: area.y + 10,
    nextPage: begin,
    need(heightMm) {
      if (flow.y + heightMm > area.y + area.height && flow.y > topOf(pages.length)) begin();
    },
    put(...items) {
      pages.at(-1)!.push(...items);
    },
    drafts: () => pages.map((items, i) => ({ sheet, title: i === 0 ? title : `${title}, continued`, items })),
  };
  const topOf = (page: number) => area.y + (page <= 1 ? 17 : 10);
  function begin() {
    pages.push([]);
    flow.y = topOf(pages.length);
    const first = pages.length === 1;
    flow.put(
      first
        ? label(area.x, area.y + 9, title, { face: 'serif-bold', sizeMm: sizes.pageTitle, role: 'title' })
        : label(area.x, area.y + 4, `${title}, continued`, {
            face: 'serif-bold',
            sizeMm: sizes.heading,
            color: inks.soft,
            role: 'aside',
          }),
    );
  }
  begin();
  return flow;
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
  /** Stands in the indent of the first line: a number, a dash. */
  readonly mark?: string;
}

export function paragraph(flow: Flow, text: string, style: ParagraphStyle = {}): void {
  const { face = 'sans', sizeMm = sizes.body, color = inks.text, after = 2, indent = 0, mark } = style;
  const width = (style.width ?? flow.area.width) - indent;
  const x = flow.area.x + indent;
  const leading = sizeMm * LEADING;
  wrapText(text, face, sizeMm, width).forEach((line, i) => {
    flow.need(leading);
    flow.y += leading;
    const look: LabelStyle = { face, sizeMm, color, ...(i === 0 && { role: 'paragraph' }) };
    if (i === 0 && mark) {
      flow.put(label(flow.area.x, flow.y, mark, { ...look, face: 'serif-bold', color: inks.accent }));
      flow.put(label(x, flow.y, line, { face, sizeMm, color }));
    } else flow.put(label(x, flow.y, line, look));
  });
  flow.y += after;
}

export type TableCell = string | { readonly draw: (x: number, y: number) => Item[] };

export interface TableColumn {
  readonly head: string;
  /** In mm; the one column without a width takes what is left. */
  readonly width?: number;
  readonly align?: 'left' | 'right';
}

const CELL_GAP = 3;

export function table(
  flow: Flow,
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
): void {
  const widths = widthsOf(columns, flow.area.width);
  const heads = columns.map(({ head }) => head);
  tableRow(flow, columns, widths, heads, 'head');
  for (const row of rows) {
    const height = rowHeight(row, widths, 'row');
    const before = flow.y;
    flow.need(height);
    if (flow.y < before) tableRow(flow, columns, widths, heads, 'head');
    tableRow(flow, columns, widths, row, 'row');
  }
  flow.y += 2;
}

/** Least width of the column that takes what is left: very wide figures are wrapped instead. */
const REST_MM = 30;

function widthsOf(columns: readonly TableColumn[], whole: number): number[] {
  const fixed = columns.reduce((sum, { width = 0 }) => sum + width, 0);
  const share = Math.min(1, (whole - REST_MM) / fixed);
  return columns.map(({ width }) => (width === undefined ? whole - fixed * share : width * share));
}

const rowLook = {
  head: { sizeMm: sizes.small, color: inks.soft, above: 0.6, below: 1.4 },
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

function tableRow(
  flow: Flow,
  columns: readonly TableColumn[],
  widths: readonly number[],
  cells: readonly TableCell[],
  kind: RowKind,
): void {
  const { sizeMm, color, above } = rowLook[kind];
  const leading = sizeMm * LEADING;
  const height = rowHeight(cells, widths, kind);
  flow.need(height + (kind === 'head' ? 14 : 0));
  const depth = Math.max(...cells.map((cell, i) => linesOf(cell, widths[i]!, kind).length));
  let x = flow.area.x;
  cells.forEach((cell, i) => {
    const width = widths[i]!;
    const right = columns[i]!.align === 'right';
    if (typeof cell === 'string') {
      const lines = linesOf(cell, width, kind);
      // Heads stand on the rule below them, however many lines they have.
      const from = kind === 'head' ? depth - lines.length : 0;
      lines.forEach((line, at) => {
        const y = flow.y + above + (from + at) * leading + sizeMm * 1.08;
        const role = at === 0 ? ({ role: 'paragraph' } as const) : {};
        const at_x = right ? x + width - (i === cells.length - 1 ? 0 : CELL_GAP) : x;
        flow.put(label(at_x, y, line, { sizeMm, color, align: right ? 'right' : 'left', ...role }));
      });
    } else flow.put(...cell.draw(x, flow.y + above));
    x += width;
  });
  flow.y += height;
  flow.put({
    kind: 'rule',
    x1: flow.area.x,
    y1: flow.y,
    x2: flow.area.x + flow.area.width,
    y2: flow.y,
    widthMm: kind === 'head' ? 0.25 : ruleMm.thin,
    color: kind === 'head' ? inks.soft : inks.hair,
  });
}

/** The width that a column of right-aligned figures needs, with its head on at most two lines. */
export function figureWidth(head: string, figures: readonly string[]): number {
  const longestWord = Math.max(...head.split(' ').map((word) => textWidthMm(word, 'sans', sizes.small)));
  const longest = Math.max(0, ...figures.map((each) => textWidthMm(each, 'sans', rowLook.row.sizeMm)));
  return Math.max(longestWord, longest, 9) + CELL_GAP + 2;
}
