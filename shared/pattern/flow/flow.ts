/**
 * Text, headings and lists set one below the other, going on over as many pages as they need; tables are in `table.ts`.
 * Nothing is cut, and nothing reaches below the body. Each is told as what it is to those who are read to.
 */

import { joinedLines, wrapText } from '../faces/measure-text.ts';
import { type LabelStyle, label } from '../page/label.ts';
import type { Face, GroupItem, Item, Structure } from '../page/page.ts';
import { type Area, bodyOf } from '../page/papers.ts';
import { inks, LEADING, type TypeScale, typeScales } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { footWords } from '../words/foot-words.ts';
import type { Draft } from './page-foot.ts';
import { FIRST_HEAD_MM, firstHead, LATER_HEAD_MM, laterHead } from './page-head.ts';

/** What all pages of a flow share. */
export type FlowContext = Pick<PatternContext, 'sheet' | 'accent'> & {
  readonly copy: Pick<PatternContext['copy'], 'language' | 'cells'>;
};

export interface Flow {
  readonly area: Area;
  /** Of the marks of lists. */
  readonly accent: string;
  /** Of large type in large print. */
  readonly sizes: TypeScale;
  /** How much space is left between things: 1 is usual, 0 the least, which saves a page where a few lines would go on to another. */
  readonly air: number;
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
export function newFlow({ sheet, accent, copy }: FlowContext, title: string, air = 1): Flow {
  const later = footWords[copy.language].continued(title);
  const area = bodyOf(sheet);
  const pages: Item[][] = [];
  let ids = 0;
  let list: string | null = null;
  let entry = '';
  const flow: Flow = {
    area,
    accent,
    sizes: typeScales[copy.cells],
    air,
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
    const head =
      pages.length === 1
        ? firstHead(area, title, accent)
        : laterHead(area, later, accent, typeScales[copy.cells].lead * 1.15);
    pages.at(-1)!.push(...head);
  }
  begin();
  return flow;
}

function group(structure: Structure, items: readonly Item[], id: string): GroupItem {
  return { kind: 'group', structure, items, id };
}

/** Stays together with what follows. */
export function heading(flow: Flow, text: string, width: number = flow.area.width): void {
  const { heading: sizeMm, body } = flow.sizes;
  const above = spaceIn(flow, 3, 4.5);
  const below = spaceIn(flow, 2, 3);
  const lines = wrapText(text, 'serif-bold', sizeMm, width);
  flow.need(above + lines.length * sizeMm * HEADING_LEADING + below + 3 * body * LEADING);
  flow.y += above - sizeMm * (HEADING_LEADING - 1);
  lines.forEach((line, i) => {
    flow.y += sizeMm * HEADING_LEADING;
    const role = i === 0 ? ({ role: 'heading' } as const) : {};
    flow.put(label(flow.area.x, flow.y, line, { face: 'serif-bold', sizeMm, ...role }));
  });
  flow.y += below;
}

const HEADING_LEADING = 1.2;

/** Between the least and the usual space, in mm, as the flow has air. */
export function spaceIn({ air }: Pick<Flow, 'air'>, leastMm: number, usualMm: number): number {
  return leastMm + (usualMm - leastMm) * air;
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
  /** The page it leads to, from 1. */
  readonly link?: number;
}

export function paragraph(flow: Flow, text: string, style: ParagraphStyle = {}): void {
  const { face = 'sans', sizeMm = flow.sizes.body, color = inks.text, indent = 0, mark, link } = style;
  const usualAfter = style.after ?? 2;
  const after = spaceIn(flow, usualAfter * 0.6, usualAfter);
  const width = (style.width ?? flow.area.width) - indent;
  const x = flow.area.x + indent;
  const leading = sizeMm * LEADING;
  const lines = wrapText(text, face, sizeMm, width);
  const joined = joinedLines(text, lines);
  if (mark) flow.beginEntry();
  lines.forEach((line, i) => {
    flow.need(leading * linesTogether(i, lines.length));
    flow.y += leading;
    const look: LabelStyle = {
      face,
      sizeMm,
      color,
      ...(joined[i] && { joined: true }),
      ...(link !== undefined && { link }),
    };
    if (!mark) flow.put(label(x, flow.y, line, { ...look, ...(i === 0 && { role: 'paragraph' }) }));
    else {
      const markLook = { ...look, face: 'serif-bold', color: flow.accent } as const;
      if (i === 0) flow.putInEntry('mark', label(flow.area.x, flow.y, mark, markLook));
      flow.putInEntry('body', label(x, flow.y, line, look));
    }
  });
  flow.y += after;
}

/** No line of a paragraph is left alone at the foot or at the top of a page. */
function linesTogether(line: number, lines: number): number {
  if (line === 0) return lines <= 3 ? lines : 2;
  return line === lines - 2 ? 2 : 1;
}
