/**
 * The welcome, in two columns: at the left what the designer says, and at the right, on the first page, the contents and the
 * hanging at a glance. A long text goes on in its column. In large print there is one column, with contents and figures below.
 */
import { chosenParts, partsThere } from '../chosen-parts.ts';
import { textWidthMm, wrapText } from '../faces/measure-text.ts';
import { textOf } from '../first-texts.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { linesOf, paragraphs } from '../flow/texts.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import { sizeToFit } from '../page/size-to-fit.ts';
import { inks, LEADING, ruleMm, type TypeScale } from '../page/style.ts';
import type { PageNumbers, PatternContext } from '../pattern-input.ts';
import { partWords } from '../words/part-words.ts';
import { welcomeWords } from '../words/welcome-words.ts';

/** Of the body's width; between them is the gap. */
const TEXT_SHARE = 0.56;
const SIDE_SHARE = 0.37;

export function welcomePages(context: PatternContext, at: PageNumbers): Draft[] {
  const { copy, printer } = context;
  const words = welcomeWords[copy.language];
  const flow = newFlow(context, words.title);
  const isLarge = copy.cells === 'large';
  const width = flow.area.width * (isLarge ? 1 : TEXT_SHARE);
  const welcome = linesOf(textOf(context, 'welcome'), printer);
  if (!isLarge) flow.put(...side(context, at, flow));
  paragraphs(flow, welcome, { face: 'serif', sizeMm: flow.sizes.lead, width, after: 2.4 });
  section(flow, words.skill, linesOf(textOf(context, 'skill'), printer), width);
  section(flow, words.terms, linesOf(textOf(context, 'terms'), printer), width);
  if (isLarge) below(context, at, flow);
  return flow.drafts();
}

function section(flow: Flow, title: string, lines: readonly string[], width: number): void {
  if (lines.length === 0) return;
  heading(flow, title);
  paragraphs(flow, lines, { width });
}

/** Contents, figures and their note, as wide as the page; each list stays on one. */
function below(context: PatternContext, at: PageNumbers, flow: Flow): void {
  const { area, accent, sizes } = flow;
  const column: Column = { x: area.x, width: area.width, accent, sizes };
  const words = welcomeWords[context.copy.language];
  for (const [title, lines] of [
    [words.contents, contentsOf(context, at)],
    [words.glance, figuresOf(context)],
  ] as const) {
    flow.need(heightOf(column, lines) + GAP_MM);
    flow.y += GAP_MM;
    flow.put(...list(column, flow.y, title, lines));
    flow.y += heightOf(column, lines);
  }
  flow.y += 2;
  paragraph(flow, words.timeNote(partsThere(context.design)), { color: inks.soft, sizeMm: sizes.note });
}

const GAP_MM = 7;

/** Contents and figures, one below the other. */
function side(context: PatternContext, at: PageNumbers, flow: Flow): Item[] {
  const { area, sizes } = flow;
  const width = area.width * SIDE_SHARE;
  const column: Column = { x: area.x + area.width - width, width, accent: flow.accent, sizes };
  const words = welcomeWords[context.copy.language];
  const contents = contentsOf(context, at);
  const contentsY = flow.y + 1;
  const glanceY = contentsY + heightOf(column, contents) + GAP_MM;
  const figures = figuresOf(context);
  const noteY = glanceY + heightOf(column, figures) + 2;
  const note = wrapText(words.timeNote(partsThere(context.design)), 'sans', sizes.small, width);
  return [
    ...list(column, contentsY, words.contents, contents),
    ...list(column, glanceY, words.glance, figures),
    ...note.map((line, i) =>
      label(column.x, noteY + (i + 1) * sizes.small * LEADING, line, {
        sizeMm: sizes.small,
        color: inks.soft,
        ...(i === 0 && { role: 'paragraph' }),
      }),
    ),
  ];
}

interface Column {
  readonly x: number;
  readonly width: number;
  readonly accent: string;
  readonly sizes: TypeScale;
}

/** Of a list: its heading, a line, and what a value that stands below its name takes more. */
function heightsIn({ lead, body }: TypeScale): {
  readonly head: number;
  readonly line: number;
  readonly below: number;
} {
  return { head: lead * 1.64, line: body * 1.85, below: body * LEADING };
}

interface Line {
  readonly name: string;
  readonly value: string;
  /** The page that it leads to, from 1. */
  readonly link?: number;
}

/** Whether name and value stand side by side; else the value stands below. */
function isShort({ name, value }: Line, { width, sizes }: Pick<Column, 'width' | 'sizes'>): boolean {
  return textWidthMm(name, 'sans', sizes.body) + textWidthMm(value, 'sans-bold', sizes.body) + 3 <= width;
}

function lineMm(line: Line, column: Column): number {
  const { line: lineHeight, below } = heightsIn(column.sizes);
  return isShort(line, column) ? lineHeight : lineHeight + below;
}

function heightOf(column: Column, lines: readonly Line[]): number {
  return heightsIn(column.sizes).head + lines.reduce((sum, line) => sum + lineMm(line, column), 0);
}

/** A heading on a rule, and below it names with their values at the right, a hairline below each. */
function list(column: Column, y: number, title: string, lines: readonly Line[]): Item[] {
  const { x, width, accent, sizes } = column;
  const { head, below: belowMm } = heightsIn(sizes);
  const right = x + width;
  const rule = (at: number, widthMm: number, color: string): Item => ({
    kind: 'rule',
    x1: x,
    y1: at,
    x2: right,
    y2: at,
    widthMm,
    color,
  });
  let top = y + head;
  return [
    label(x, y + sizes.lead * 0.87, title, { face: 'serif-bold', sizeMm: sizes.lead, role: 'heading' }),
    rule(top - 0.6, 0.4, accent),
    ...lines.flatMap((line): Item[] => {
      const baseline = top + sizes.body * 1.2;
      const { name, value, link } = line;
      const leads = link === undefined ? {} : { link };
      const below = isShort(line, column) ? 0 : belowMm;
      top += lineMm(line, column);
      const sizeMm = sizeToFit(value, 'sans-bold', sizes.body, width);
      return [
        label(x, baseline, name, {
          sizeMm: sizeToFit(name, 'sans', sizes.body, width),
          role: 'paragraph',
          ...leads,
        }),
        label(right, baseline + below, value, {
          face: 'sans-bold',
          sizeMm,
          align: 'right',
          color: accent,
          ...leads,
        }),
        rule(top - 0.6, ruleMm.thin, inks.hair),
      ];
    }),
  ];
}

/** The parts that have pages, but for cover and welcome, in the order in which they stand. */
function contentsOf({ copy, design }: PatternContext, at: PageNumbers): Line[] {
  const names = partWords[copy.language];
  return chosenParts(design)
    .filter((part) => part !== 'cover' && part !== 'welcome')
    .map((part) => ({ name: names[part], link: at.first(part) }))
    .filter((entry): entry is { name: string; link: number } => entry.link !== null)
    .sort((a, b) => a.link - b.link)
    .map(({ name, link }) => ({ name, value: String(link), link }));
}

function figuresOf({ materials, figures, copy }: PatternContext): Line[] {
  const words = welcomeWords[copy.language].figures;
  const { finished, totals } = materials;
  const width = figures.length(finished.widthMm);
  const size = (heightMm: number) => `${width} × ${figures.length(heightMm)}`;
  const line = (name: string, value: string): Line => ({ name, value });
  return [
    line(words.picture, size(finished.knottedHeightMm)),
    line(words.withFringe, size(finished.heightWithFringeMm)),
    line(words.cords, figures.count(materials.columns)),
    line(words.rows, figures.count(materials.rows)),
    line(words.knots, figures.count(totals.knots)),
    line(words.yarns, figures.count(materials.yarns.length)),
    line(words.time, words.about(figures.time(totals.seconds))),
  ];
}
