/**
 * The template of the fringe: in true size on one sheet where it fits, in true size over several sheets where these are few, and
 * else to scale; the lengths of every fifth cord in figures in any case.
 */
import type { Language } from '../design/pattern-schema.ts';
import { fringeMm } from '../gauge/fringe.ts';
import { textWidthMm } from './faces/measure-text.ts';
import { type Flow, heading, newFlow, paragraph } from './flow.ts';
import { drawTemplate, type FringeTemplate, isTold, NUMBERS_MM, templateSize } from './fringe-template.ts';
import { label } from './label.ts';
import type { Item, PlainItem } from './page.ts';
import type { Draft } from './page-foot.ts';
import { LATER_HEAD_MM, laterHead } from './page-head.ts';
import { type Area, bodyOf } from './papers.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, LEADING, ruleMm, sizes } from './style.ts';
import { type Tile, tilesOf } from './tiles.ts';
import { fringeWords } from './words/fringe-words.ts';

/** More sheets than this nobody tapes together. */
const SHEETS_AT_MOST = 8;
/** A template to scale is no higher than this share of the body. */
const SCALED_SHARE = 0.45;

/** Kept free at both sides, so that the numbers of the outermost cords stay within the margins. */
const SIDE_MM = 4;

/** No page where nothing hangs below the last row. */
export function fringePages(context: PatternContext): Draft[] {
  const { design, materials, accent, copy } = context;
  const words = fringeWords[copy.language];
  const template: FringeTemplate = {
    lengthsMm: fringeMm(design.columns, design.fringe),
    pitchMm: materials.gauge.pitchMm,
  };
  const size = templateSize(template);
  if (size.height === 0) return [];
  const flow = newFlow(context, words.title);
  const { area } = flow;
  const fits = size.width <= area.width - 2 * SIDE_MM && size.height <= roomForTrueSize(flow);
  const tiles = fits || isStraight(template) ? [] : tilesOf(size, roomOnSheet(area));
  const sheets = tiles.length <= SHEETS_AT_MOST ? tiles.length : 0;
  const times = fits ? 1 : timesIn(area, size);
  introduction(flow, context, template, { times, sheets });
  const scale = 1 / times;
  flow.need(size.height * scale + NUMBERS_MM + 6);
  const at = { x: area.x + (area.width - size.width * scale) / 2, y: flow.y + NUMBERS_MM };
  const window: Area = { x: 0, y: 0, ...size };
  flow.put({
    kind: 'figure',
    alt: words.alt,
    items: [
      ...drawTemplate(template, { ...at, window, scale, accent }),
      ...(sheets > 0 ? frames(tiles, at, scale) : []),
    ],
  });
  flow.y = at.y + size.height * scale + 4;
  lengths(flow, context, template);
  const drafts = flow.drafts().map((draft, i) => ({ ...draft, checkLine: times === 1 && i === 0 }));
  return sheets === 0 ? drafts : [...drafts, ...tilePages(tiles, template, context)];
}

function isStraight({ lengthsMm }: FringeTemplate): boolean {
  return lengthsMm.every((length) => length === lengthsMm[0]);
}

/** What the words above the drawing leave at least. */
function roomForTrueSize({ area, y }: Flow): number {
  const wordsMm = 34;
  return area.y + area.height - y - wordsMm - NUMBERS_MM;
}

/** How many times smaller the template is drawn: rounded up to a tenth, so that the scale that is told is exact. */
function timesIn(area: Area, { width, height }: { width: number; height: number }): number {
  const times = Math.max(1, width / (area.width - 2 * SIDE_MM), height / (area.height * SCALED_SHARE));
  return Math.ceil(times * 10 - 1e-9) / 10;
}

function introduction(
  flow: Flow,
  { design, figures, copy }: PatternContext,
  { lengthsMm }: FringeTemplate,
  { times, sheets }: { times: number; sheets: number },
): void {
  const words = fringeWords[copy.language];
  const shortest = figures.length(lengthsMm.reduce((a, b) => Math.min(a, b)));
  const longest = figures.length(lengthsMm.reduce((a, b) => Math.max(a, b)));
  const what =
    shortest === longest
      ? words.straight(longest)
      : words.shaped(words.shape[design.fringe.shape], shortest, longest);
  const how = sheets > 0 ? words.tiled(sheets) : times === 1 ? words.trueSize : words.toScale(times);
  const width = flow.area.width * 0.9;
  paragraph(flow, `${what} ${how}`, { width, after: 1.4 });
  paragraph(flow, words.use, { width, color: inks.soft, sizeMm: sizes.note, after: 4 });
}

/** The first cord, each fifth and the last, in as many columns as there is room for. */
function lengths(flow: Flow, { figures, copy }: PatternContext, { lengthsMm }: FringeTemplate): void {
  const words = fringeWords[copy.language];
  const told = lengthsMm
    .map((length, column) => ({ column, name: words.cord(column + 1), value: figures.length(length) }))
    .filter(({ column }) => isTold(column, lengthsMm.length));
  const widest = (texts: readonly string[], face: 'sans' | 'sans-bold') =>
    texts.reduce((most, text) => Math.max(most, textWidthMm(text, face, sizes.note)), 0);
  const names = widest(
    told.map(({ name }) => name),
    'sans',
  );
  const values = widest(
    told.map(({ value }) => value),
    'sans-bold',
  );
  const each = names + 2.5 + values + 7;
  const columns = Math.max(1, Math.floor((flow.area.width + 7) / each));
  const leading = sizes.note * LEADING;
  heading(flow, words.lengths);
  for (let i = 0; i < told.length; i += columns) {
    flow.need(leading);
    flow.y += leading;
    told.slice(i, i + columns).forEach(({ name, value }, column) => {
      const x = flow.area.x + column * each;
      flow.put(
        label(x, flow.y, name, { sizeMm: sizes.note, color: inks.soft, role: 'paragraph' }),
        label(x + names + 2.5 + values, flow.y, value, {
          face: 'sans-bold',
          sizeMm: sizes.note,
          align: 'right',
        }),
      );
    });
  }
}

/** What one sheet holds of the template in true size. */
function roomOnSheet({ width, height }: Area): { width: number; height: number } {
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
  const area = bodyOf(sheet);
  return tiles.map(({ window, number }) => {
    const at = { x: area.x + SIDE_MM, y: area.y + LATER_HEAD_MM + NUMBERS_MM };
    const name = words.sheet(number, tiles.length);
    const items: Item[] = [
      ...laterHead(area, `${words.title}, ${name}`, accent),
      {
        kind: 'figure',
        alt: words.tileAlt(number, cordsIn(window, template, copy.language)),
        items: [
          ...drawTemplate(template, { ...at, window, scale: 1, accent }),
          {
            kind: 'box',
            ...at,
            width: window.width,
            height: window.height,
            stroke: inks.soft,
            strokeMm: ruleMm.thin,
          },
        ],
      },
    ];
    return { sheet, title: `${words.title}, ${name}`, items, checkLine: true };
  });
}

function cordsIn({ x, width }: Area, { lengthsMm, pitchMm }: FringeTemplate, language: Language): string {
  const first = Math.floor(x / pitchMm + 0.5) + 1;
  const last = Math.min(lengthsMm.length, Math.ceil((x + width) / pitchMm - 0.5));
  return fringeWords[language].cords(first, Math.max(first, last));
}
