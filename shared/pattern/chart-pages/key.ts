/**
 * The key: what stands for which yarn, and how many knots of it the whole chart has, and this page adds. It lists every yarn
 * that the chart uses, in as many columns as its names allow; names too long for their column end in an ellipsis, and the heading
 * says where they stand in full. The key's own have shorter words instead.
 */

import type { Chart } from '../../chart/chart.ts';
import { BARE, codeOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import { BLACK_INK } from '../../yarn/colour-contrast.ts';
import { fitText, textWidthMm } from '../faces/measure-text.ts';
import { label } from '../page/label.ts';
import type { CellsItem, GroupItem, Item, PlainItem, Structure } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import { stamped } from '../page/stamped.ts';
import { inks } from '../page/style.ts';
import { chartWords } from '../words/chart-words.ts';
import { bareMark } from './chart-block.ts';
import { liftInk } from './lift-marks.ts';
import type { KeyScale } from './print-scale.ts';
import { printScales } from './print-scale.ts';

type KeyWords = Pick<
  (typeof chartWords)['en'],
  | 'key'
  | 'fullNames'
  | 'bare'
  | 'bareShort'
  | 'lift'
  | 'liftShort'
  | 'count'
  | 'here'
  | 'symbol'
  | 'bareAlt'
  | 'liftAlt'
>;

export interface KeyEntry {
  /** 'lift': the mark of a cord that is lifted. */
  readonly code: number | 'lift';
  readonly name: string;
  /** Cells of the whole chart; 0 for the lift mark. */
  readonly count: number;
}

/** The yarns of the chart in the design's order, then the bare cells if there are any. */
export function keyEntries(
  yarns: readonly Pick<Yarn, 'id' | 'name'>[],
  { cells }: Chart,
  words: KeyWords = chartWords.en,
): KeyEntry[] {
  const counts = new Uint32Array(256);
  for (const code of cells) counts[code]!++;
  const tied = yarns.map(({ id, name }) => ({ code: codeOf(id), name, count: counts[codeOf(id)]! }));
  return [...tied, { code: BARE, name: words.bare, count: counts[BARE]! }].filter(({ count }) => count > 0);
}

export interface KeyLayout {
  readonly scale: KeyScale;
  readonly columns: number;
  readonly columnWidth: number;
  readonly lines: number;
  readonly height: number;
  /** Whether there is room for the counts of the page. */
  readonly withHere: boolean;
}

export interface KeyOptions {
  readonly scale: KeyScale;
  readonly words: KeyWords;
  /** Whether the counts of the page are wished. */
  readonly withHere: boolean;
  /** Whether the yarns' own colours stand beside their swatches. */
  readonly withColors: boolean;
  /** At most; as many as the width allows where absent. */
  readonly columns?: number;
}

const usual: KeyOptions = {
  scale: printScales.standard.key,
  words: chartWords.en,
  withHere: false,
  withColors: false,
};

/** How the entries fall into columns within a width, in mm. */
export function layOutKey(entries: readonly KeyEntry[], width: number, options = usual): KeyLayout {
  const without = inColumns(entries, width, { ...options, withHere: false });
  if (!options.withHere) return without;
  // Counts of the page are left out where they would make the key longer, or shorten a name.
  const withHere = inColumns(entries, width, options);
  const isWhole = withHere.columnWidth >= widestEntry(entries, options) - 1e-9;
  return isWhole && withHere.lines <= without.lines ? withHere : without;
}

function inColumns(entries: readonly KeyEntry[], width: number, options: KeyOptions): KeyLayout {
  const { scale, withHere } = options;
  const widest = widestEntry(entries, options);
  const whole = Math.floor(width / widest);
  const narrow = Math.floor(width / scale.narrowestMm);
  const few = 4;
  // Whole names where that takes few lines, else as many columns as stay legible.
  const free = whole >= 1 && Math.ceil(entries.length / whole) <= few ? whole : Math.max(whole, narrow);
  const most = Math.min(free, options.columns ?? free);
  const lines = Math.ceil(entries.length / Math.max(1, Math.min(most, entries.length)));
  const columns = Math.ceil(entries.length / Math.max(lines, 1));
  const columnWidth = Math.min(width / Math.max(columns, 1), Math.max(widest, scale.narrowestMm));
  return { scale, columns, columnWidth, lines, height: scale.headingMm + lines * scale.lineMm, withHere };
}

/** Room between two columns, in ems of the names. */
const COLUMN_GAP = 1.8;

function widestEntry(entries: readonly KeyEntry[], options: KeyOptions): number {
  const { nameMm } = options.scale;
  const widths = entries.map(
    (entry) => textWidthMm(entry.name, 'sans', nameMm) + figuresWidth(figuresOf(entry, options), nameMm),
  );
  return (
    widths.reduce((most, each) => Math.max(most, each), 0) + swatchesMm(options) + (0.6 + COLUMN_GAP) * nameMm
  );
}

/** A swatch, and half as much for the yarn's own colour. */
function swatchesMm({ scale, withColors }: Pick<KeyOptions, 'scale' | 'withColors'>): number {
  return scale.swatchMm * (withColors ? 1.5 : 1);
}

/** The counts as they are printed; `here` is the page's own count, at most that of the whole chart, and none is left out. */
function figuresOf(
  { code, count }: KeyEntry,
  { words, withHere }: Pick<KeyOptions, 'words' | 'withHere'>,
  here = count,
): string[] {
  if (code === 'lift') return [];
  return [words.count(count), ...(withHere && here > 0 ? [words.here(words.count(here))] : [])];
}

/** Each figure with the gap before it. */
function figuresWidth(figures: readonly string[], sizeMm: number): number {
  return figures.reduce((sum, each) => sum + textWidthMm(each, 'sans', sizeMm) + sizeMm / 2, 0);
}

export interface PlacedKey {
  readonly x: number;
  readonly y: number;
  readonly cellInks: CellsItem['inks'];
  readonly words?: KeyWords;
  /** The cells that the page adds, by code. */
  readonly here?: Uint32Array;
  /** A page before has told the key already: it is seen again, and not read again. */
  readonly isAgain?: boolean;
  /** The page's own title is its heading. */
  readonly withoutHeading?: boolean;
  /** Where the yarns' names stand in full; absent or null: nowhere. */
  readonly namesPage?: number | null;
  /** The yarns' own colours by code, where the cells do not show them. */
  readonly colors?: Readonly<Record<number, string>>;
}

/** A table: a row for each entry, its name at the head, then its counts. */
export function drawKey(entries: readonly KeyEntry[], layout: KeyLayout, placed: PlacedKey): Item[] {
  const { x, y, words = chartWords.en, isAgain, withoutHeading } = placed;
  const { scale, lines, columnWidth } = layout;
  if (entries.length === 0) return [];
  const headingMm = keyHeadingMm(scale);
  const rows = entries.map((entry, i) => {
    const left = x + Math.floor(i / lines) * columnWidth;
    const top = y + scale.headingMm + (i % lines) * scale.lineMm;
    return drawEntry(entry, layout, { ...placed, x: left, y: top, words });
  });
  const heading = label(x, y + headingMm * 0.8, words.key, {
    face: 'serif-bold',
    sizeMm: headingMm,
    role: isAgain ? 'again' : 'heading',
  });
  const headed = withoutHeading ? [] : [heading];
  const noteAt = withoutHeading
    ? { x, y: y + scale.headingMm * 0.8 }
    : { x: x + textWidthMm(words.key, 'serif-bold', headingMm) + scale.nameMm, y: heading.y };
  const note = namesNote(entries, layout, { ...placed, ...noteAt, words });
  if (!isAgain)
    return [
      ...headed,
      ...note,
      group(
        'table',
        rows.map((cells) => group('row', cells)),
      ),
    ];
  // The name and the count of the whole chart come again alike, the count of the page does not.
  const alike = rows.flatMap((cells) => plainItems(cells.slice(0, 2)));
  const own = rows.flatMap((cells) => plainItems(cells.slice(2)));
  return [...stamped([...headed, ...[...note, ...alike].map(seenAgain)], x, y), ...own.map(seenAgain)];
}

/** Where names are cut short, the page on which they are not; on one line with the heading. */
function namesNote(
  entries: readonly KeyEntry[],
  layout: KeyLayout,
  { x, y, words, colors, namesPage, isAgain }: PlacedKey & { readonly words: KeyWords },
): PlainItem[] {
  const isCut = (entry: KeyEntry) =>
    isYarn(entry.code) &&
    shownName(entry, layout, figuresOf(entry, { words, ...layout }), { words, colors }) !== entry.name;
  if (!namesPage || !entries.some(isCut)) return [];
  const look = { sizeMm: layout.scale.nameMm, color: inks.soft, role: 'paragraph' } as const;
  return [label(x, y, words.fullNames(namesPage), isAgain ? look : { ...look, link: namesPage })];
}

/** Em of the heading. */
export function keyHeadingMm({ headingMm }: KeyScale): number {
  return headingMm * 0.72;
}

function seenAgain(item: PlainItem): PlainItem {
  return item.kind === 'text' ? { ...item, role: 'again' } : item;
}

function group(structure: Structure, items: readonly Item[]): GroupItem {
  return { kind: 'group', structure, items };
}

function drawEntry(
  entry: KeyEntry,
  layout: KeyLayout,
  { x, y, words, cellInks, here, colors }: PlacedKey & { readonly words: KeyWords },
): GroupItem[] {
  const { scale, withHere } = layout;
  const { swatchMm, nameMm } = scale;
  const { code } = entry;
  const color = code === 'lift' ? undefined : colors?.[code];
  const nameX = x + swatchesMm({ scale, withColors: colors !== undefined }) + nameMm * 0.6;
  const baseline = y + swatchMm / 2 + nameMm * 0.355;
  const figures = figuresOf(entry, { words, withHere }, code === 'lift' ? 0 : here?.[code]);
  const name = shownName(entry, layout, figures, { words, colors });
  const look = { sizeMm: nameMm } as const;
  let at = nameX + textWidthMm(name, 'sans', nameMm);
  const cells = figures.map((figure) => {
    const item = label(at + nameMm / 2, baseline, figure, { ...look, color: inks.soft });
    at += nameMm / 2 + textWidthMm(figure, 'sans', nameMm);
    return group('cell', [item]);
  });
  // The lift mark counts nothing, and a yarn may have no knots here, but rows of a table are equally long.
  const missing = 1 + Number(withHere) - cells.length;
  const chip: Item[] = color === undefined ? [] : [chipOf(color, x + swatchMm, y, swatchMm)];
  return [
    group('row-head', [
      {
        kind: 'figure',
        alt: altOf(code, cellInks, words),
        items: drawSwatch(code, x, y, swatchMm, cellInks),
      },
      ...chip,
      label(nameX, baseline, name, look),
    ]),
    ...cells,
    ...Array.from({ length: missing }, () => group('cell', [])),
  ];
}

/** As much of the name as its column has room for before the figures. */
function shownName(
  { code, name }: KeyEntry,
  { scale, columnWidth }: KeyLayout,
  figures: readonly string[],
  { words, colors }: Required<Pick<PlacedKey, 'words'>> & { readonly colors: PlacedKey['colors'] },
): string {
  const { nameMm } = scale;
  const aroundMm = swatchesMm({ scale, withColors: colors !== undefined }) + (COLUMN_GAP + 0.2) * nameMm;
  const room = columnWidth - aroundMm - figuresWidth(figures, nameMm);
  const forms = [name, ...shorterForms(code, words)];
  const fitting = forms.find((form) => textWidthMm(form, 'sans', nameMm) <= room) ?? forms.at(-1)!;
  return fitText(fitting, 'sans', nameMm, room);
}

function isYarn(code: KeyEntry['code']): boolean {
  return code !== 'lift' && code !== BARE;
}

/** Of the key's own names: a yarn has the one that the designer gave it. */
function shorterForms(code: KeyEntry['code'], words: KeyWords): readonly string[] {
  if (code === 'lift') return words.liftShort;
  return code === BARE ? words.bareShort : [];
}

/** The yarn's own colour beside its swatch. */
function chipOf(color: string, x: number, y: number, size: number): Item {
  return { kind: 'box', x, y, width: size / 2, height: size, fill: color, stroke: inks.soft, strokeMm: 0.18 };
}

function altOf(code: KeyEntry['code'], cellInks: CellsItem['inks'], words: KeyWords): string {
  if (code === 'lift') return words.liftAlt;
  const symbol = cellInks[code]?.symbol;
  return symbol === undefined ? words.bareAlt : words.symbol(symbol);
}

/** One cell as it stands in the chart. */
export function drawSwatch(
  code: KeyEntry['code'],
  x: number,
  y: number,
  size: number,
  cellInks: CellsItem['inks'],
): PlainItem[] {
  const frame = { kind: 'box', x, y, width: size, height: size, stroke: inks.soft, strokeMm: 0.18 } as const;
  const cell = { kind: 'cells', x, y, cellWidth: size, cellHeight: size, columns: 1, rows: 1 } as const;
  const drawn = { ...cell, codes: Uint8Array.of(1), symbolMm: size };
  if (code === 'lift') return [frame, { ...drawn, inks: { 1: liftInk('left', BLACK_INK, size) } }];
  const ink = cellInks[code];
  if (code === BARE || !ink) {
    const steps = bareMark(x + size / 2, y + size / 2, size);
    return [frame, { kind: 'path', steps, stroke: inks.soft, strokeMm: 0.2 }];
  }
  return [{ ...drawn, inks: { 1: ink } }, frame];
}
