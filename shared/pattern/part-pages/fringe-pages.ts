/**
 * The template of the fringe: in true size on one sheet where it fits, in true size over several sheets where these are few, and
 * else to scale; and the lengths of every fifth cord in figures. What is in true size says on which paper, with a bar to measure.
 */
import type { Language } from '../../design/pattern-schema.ts';
import { fringeMm } from '../../gauge/fringe.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { LATER_HEAD_MM, laterHead } from '../flow/page-head.ts';
import { label } from '../page/label.ts';
import type { Item, PlainItem } from '../page/page.ts';
import { type Area, bodyOf, papers } from '../page/papers.ts';
import { inks, LEADING, ruleMm, sizes, typeScales } from '../page/style.ts';
import { type Tile, tilesOf } from '../page/tiles.ts';
import { trueSizeBar, trueSizeBarMm } from '../page/true-size-bar.ts';
import type { PatternContext } from '../pattern-input.ts';
import { fringeWords } from '../words/fringe-words.ts';
import { drawTemplate, type FringeTemplate, isTold, NUMBERS_MM, templateSize } from './fringe-template.ts';

/** More sheets than this nobody tapes together. */
const SHEETS_AT_MOST = 8;
/** A template to scale is no higher than this share of the body. */
const SCALED_SHARE = 0.45;

/** Kept free at both sides, so that the numbers of the outermost cords stay within the margins. */
const SIDE_MM = 4;

/** No page where nothing hangs below the last row. */
export function fringePages(context: PatternContext): Draft[] {
  const { design, materials, sheet } = context;
  const all = fringeMm(design.columns, design.fringe);
  if (all.every((length) => length === 0)) return [];
  const { pitchMm } = materials.gauge;
  const area = bodyOf(sheet);
  // Of a straight fringe, a strip as wide as the sheet tells as much as the whole.
  const isStrip = isStraight(all) && all.length * pitchMm > area.width - 2 * SIDE_MM;
  const cords = isStrip ? Math.floor((area.width - 2 * SIDE_MM) / pitchMm) : all.length;
  const template: FringeTemplate = { lengthsMm: all.slice(0, Math.max(cords, 1)), pitchMm };
  const size = templateSize(template);
  const way = { all, template, isStrip, tiles: [] };
  const fits = size.width <= area.width - 2 * SIDE_MM;
  const [page, ...more] = fits ? firstPages(context, { ...way, times: 1 }) : [];
  if (page && more.length === 0) return [page];
  const times = timesIn(area, size);
  const tiles = tilesOf(size, roomOnSheet(area))
    .filter(({ window }) => holdsCords(window, template))
    .map((tile, i) => ({ ...tile, number: i + 1 }));
  if (isStraight(all) || times === 1 || tiles.length > SHEETS_AT_MOST)
    return firstPages(context, { ...way, times });
  return [...firstPages(context, { ...way, tiles, times }), ...tilePages(tiles, template, context)];
}

/** Whether any cord reaches into it: a sheet that would be empty is not printed. */
function holdsCords({ x, y, width }: Area, { lengthsMm, pitchMm }: FringeTemplate): boolean {
  return lengthsMm.some((length, column) => {
    const middle = (column + 0.5) * pitchMm;
    return length > y && middle >= x && middle < x + width;
  });
}

interface TemplateWay {
  /** Lengths of all cords. */
  readonly all: readonly number[];
  /** What of them is drawn. */
  readonly template: FringeTemplate;
  readonly isStrip: boolean;
  /** Sheets in true size that follow. */
  readonly tiles: readonly Tile[];
  readonly times: number;
}

/** What the fringe is like, its drawing, the bar to measure where anything is in true size, and the lengths in figures. */
function firstPages(context: PatternContext, way: TemplateWay): Draft[] {
  const { copy } = context;
  const { all, template, isStrip, tiles, times } = way;
  const flow = newFlow(context, fringeWords[copy.language].title);
  introduction(flow, context, way);
  // What is alike for all cords is told in words where it can't be drawn in true size.
  if (isStraight(all) && times > 1) return flow.drafts();
  // One sheet needs no number.
  drawn(flow, context, template, { tiles: tiles.length > 1 ? tiles : [], times, isStrip });
  // Beside a smaller picture it would make this seem in true size; the sheets that follow have one each.
  if (times === 1) {
    const barMm = trueSizeBarMm(flow.sizes);
    flow.need(barMm);
    flow.put(...trueSizeBar(flow.area.x, flow.y, flow.sizes, barWords(context)));
    flow.y += barMm;
  }
  if (!isStraight(all)) lengths(flow, context, template);
  return flow.drafts();
}

interface Drawing {
  /** The sheets that are numbered over it; none where it is in true size. */
  readonly tiles: readonly Tile[];
  readonly times: number;
  readonly isStrip: boolean;
}

function drawn(
  flow: Flow,
  { copy, accent }: PatternContext,
  template: FringeTemplate,
  { tiles, times, isStrip }: Drawing,
): void {
  const { area, sizes } = flow;
  const size = templateSize(template);
  const scale = 1 / times;
  flow.need(size.height * scale + NUMBERS_MM + 6);
  const at = { x: area.x + (area.width - size.width * scale) / 2, y: flow.y + NUMBERS_MM };
  const window: Area = { x: 0, y: 0, ...size };
  flow.put({
    kind: 'figure',
    alt: fringeWords[copy.language].alt,
    items: [
      ...drawTemplate(template, { ...at, window, scale, accent, numberMm: isStrip ? 0 : sizes.foot }),
      ...frames(tiles, at, scale),
    ],
  });
  flow.y = at.y + size.height * scale + 4;
}

function isStraight(lengthsMm: readonly number[]): boolean {
  return lengthsMm.every((length) => length === lengthsMm[0]);
}

function barWords({ copy, paper }: PatternContext): Parameters<typeof trueSizeBar>[3] {
  const words = fringeWords[copy.language];
  return { check: words.check(papers[paper].name), centimetres: '10 cm', inches: words.inches };
}

/** How many times smaller the template is drawn: rounded up to a tenth, so that the scale that is told is exact. */
function timesIn(area: Area, { width, height }: { width: number; height: number }): number {
  const times = Math.max(1, width / (area.width - 2 * SIDE_MM), height / (area.height * SCALED_SHARE));
  return Math.ceil(times * 10 - 1e-9) / 10;
}

function introduction(
  flow: Flow,
  { design, figures, copy, paper }: PatternContext,
  { all: lengthsMm, isStrip, tiles, times }: TemplateWay,
): void {
  const words = fringeWords[copy.language];
  const shortest = figures.length(lengthsMm.reduce((a, b) => Math.min(a, b)));
  const longest = figures.length(lengthsMm.reduce((a, b) => Math.max(a, b)));
  const straight = isStraight(lengthsMm);
  const what = straight
    ? words.straight(longest)
    : words.shaped(words.shape[design.fringe.shape], shortest, longest);
  const { name } = papers[paper];
  const trueSize = isStrip ? words.strip(name) : words.trueSize(name);
  const how =
    tiles.length > 0 ? words.tiled(tiles.length, name) : times === 1 ? trueSize : words.toScale(times);
  const width = flow.area.width * 0.92;
  paragraph(flow, straight && times > 1 ? what : `${what} ${how}`, { width, after: 1.4 });
  paragraph(flow, words.use, { width, color: inks.soft, sizeMm: flow.sizes.note, after: 4 });
}

/** The first cord, each fifth and the last, in as many columns as there is room for. */
function lengths(flow: Flow, { figures, copy }: PatternContext, { lengthsMm }: FringeTemplate): void {
  const words = fringeWords[copy.language];
  const { note } = flow.sizes;
  const told = lengthsMm
    .map((length, column) => ({ column, name: words.cord(column + 1), value: figures.length(length) }))
    .filter(({ column }) => isTold(column, lengthsMm.length));
  const widest = (texts: readonly string[], face: 'sans' | 'sans-bold') =>
    texts.reduce((most, text) => Math.max(most, textWidthMm(text, face, note)), 0);
  const names = widest(
    told.map(({ name }) => name),
    'sans',
  );
  const values = widest(
    told.map(({ value }) => value),
    'sans-bold',
  );
  const [behindName, between] = [note * 0.85, note * 2.4];
  const each = names + behindName + values + between;
  const columns = Math.max(1, Math.floor((flow.area.width + between) / each));
  const leading = note * LEADING;
  heading(flow, words.lengths);
  for (let i = 0; i < told.length; i += columns) {
    flow.need(leading);
    flow.y += leading;
    told.slice(i, i + columns).forEach(({ name, value }, column) => {
      const x = flow.area.x + column * each;
      flow.put(
        label(x, flow.y, name, { sizeMm: note, color: inks.soft, role: 'paragraph' }),
        label(x + names + behindName + values, flow.y, value, {
          face: 'sans-bold',
          sizeMm: note,
          align: 'right',
        }),
      );
    });
  }
}

/** What one sheet holds of the template in true size. */
function roomOnSheet({ width, height }: Area): { readonly width: number; readonly height: number } {
  return { width: width - 2 * SIDE_MM, height: height - LATER_HEAD_MM - NUMBERS_MM - 2 };
}

/** The sheets over the template to scale, each with its number. */
function frames(tiles: readonly Tile[], at: { x: number; y: number }, scale: number): PlainItem[] {
  return tiles.flatMap(({ window, number }): PlainItem[] => {
    const [x, y] = [at.x + window.x * scale, at.y + window.y * scale];
    const [width, height] = [window.width * scale, window.height * scale];
    return [
      { kind: 'box', x, y, width, height, stroke: inks.soft, strokeMm: ruleMm.thin },
      label(x + width / 2, y + height / 2 + sizes.heading * 0.36, String(number), {
        face: 'serif-bold',
        sizeMm: Math.min(sizes.heading, height * 0.8, width * 0.8),
        color: inks.soft,
        align: 'center',
        role: 'aside',
      }),
    ];
  });
}

function tilePages(tiles: readonly Tile[], template: FringeTemplate, context: PatternContext): Draft[] {
  const { sheet, accent, copy } = context;
  const words = fringeWords[copy.language];
  const sizes = typeScales[copy.cells];
  const area = bodyOf(sheet);
  const barY = area.y + area.height - trueSizeBarMm(sizes);
  return tiles.map(({ window, number }) => {
    const at = { x: area.x + SIDE_MM, y: area.y + LATER_HEAD_MM + NUMBERS_MM };
    const name = tiles.length === 1 ? words.inTrueSize : words.sheet(number, tiles.length);
    // A sheet without room for the bar has the line of its foot.
    const hasBar = at.y + window.height + 4 <= barY;
    const items: Item[] = [
      ...laterHead(area, `${words.title}, ${name}`, accent, sizes.lead * 1.15),
      {
        kind: 'figure',
        alt: words.tileAlt(number, cordsIn(window, template, copy.language)),
        items: [
          ...drawTemplate(template, { ...at, window, scale: 1, accent, numberMm: sizes.foot }),
          {
            kind: 'box',
            ...at,
            width: window.width,
            height: window.height,
            stroke: inks.soft,
            strokeMm: ruleMm.thin,
          },
          ...(tiles.length === 1 ? [] : nameInside({ ...window, ...at }, name, sizes.foot)),
        ],
      },
      ...(hasBar ? trueSizeBar(area.x, barY, sizes, barWords(context)) : []),
    ];
    return { sheet, title: `${words.title}, ${name}`, items, checkLine: !hasBar };
  });
}

/** On the sheet itself, so that it is still told apart once it is cut along its frame. */
function nameInside({ x, y, width }: Area, name: string, sizeMm: number): PlainItem[] {
  const nameMm = textWidthMm(name, 'sans', sizeMm);
  if (nameMm + 4 > width) return [];
  const middle = x + width / 2;
  const box = { x: middle - nameMm / 2 - 1, y: y + 2, width: nameMm + 2, height: sizeMm * 1.6 };
  return [
    { kind: 'box', ...box, fill: inks.paper },
    label(middle, y + 2 + sizeMm * 1.16, name, { sizeMm, color: inks.soft, align: 'center', role: 'aside' }),
  ];
}

function cordsIn({ x, width }: Area, { lengthsMm, pitchMm }: FringeTemplate, language: Language): string {
  const first = Math.floor(x / pitchMm + 0.5) + 1;
  const last = Math.min(lengthsMm.length, Math.ceil((x + width) / pitchMm - 0.5));
  return fringeWords[language].cords(first, Math.max(first, last));
}
