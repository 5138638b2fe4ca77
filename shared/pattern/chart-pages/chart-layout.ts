/**
 * Where a chart page has its cells, its key and its map. Pages are as few as the cells' least size allows; the key stands
 * below the cells, or beside them where that saves pages, and the sheet is turned where that saves pages.
 */

import type { Chart } from '../../chart/chart.ts';
import type { Repeat } from '../../chart/repeats.ts';
import type { CellsItem } from '../page/page.ts';
import { type Area, bodyOf, type Sheet, turned } from '../page/papers.ts';
import type { chartWords } from '../words/chart-words.ts';
import { cordNumbersMm, rowNumbersMm } from './chart-block.ts';
import { type FrameLines, frameLines } from './frame-lines.ts';
import { type KeyEntry, type KeyLayout, layOutKey } from './key.ts';
import { type PrintScale, printScales } from './print-scale.ts';
import { type RowsBeside, type RowsBesideWish, rowsBeside } from './rows-beside.ts';
import { type RowsNote, rowsNote } from './rows-note.ts';
import { longest, pagesOf, type Room, type Split, splitChart } from './split-chart.ts';

export interface ChartInput {
  readonly chart: Chart;
  /** A knot's width over its height. */
  readonly aspect: number;
  readonly sheet: Sheet;
  readonly entries: readonly KeyEntry[];
  /** Whose first repeats are framed, and told below the key. */
  readonly repeats: readonly Repeat[];
  readonly cellInks: CellsItem['inks'];
  /** For the map, on which no symbols are seen. */
  readonly mapInks: CellsItem['inks'];
  readonly scale: PrintScale;
  readonly accent: string;
  readonly words: (typeof chartWords)['en'];
  /** Where the yarns' names stand in full; null: nowhere. */
  readonly namesPage: number | null;
  /** Of its pages; an outline tells it. */
  readonly title: string;
  /** The yarns' own colours by code, where the cells do not show them. */
  readonly colors?: Readonly<Record<number, string>>;
  /** Present where the rows are wished in words beside the chart. */
  readonly beside?: RowsBesideWish;
}

export interface ChartLayout {
  readonly split: Split;
  /** Whether there are several pages, with join marks and a map. */
  readonly joined: boolean;
  readonly sheet: Sheet;
  readonly body: Area;
  /** Top left corner of the cells: all pages place them as if each were full. */
  readonly x: number;
  readonly y: number;
  readonly key: KeyLayout;
  /** Below the key. */
  readonly frames: FrameLines;
  /** Whether some of the key of these pages is in small type, and stands in the copy's own on pages before them. */
  readonly keyApart: boolean;
  readonly keyX: number;
  readonly keyY: number;
  /** Top left corner of the map. */
  readonly mapX: number;
  readonly mapY: number;
  /** Null where they are not wished, or have no room. */
  readonly beside: RowsBeside | null;
  /** Where they are wished and have no room. */
  readonly note: RowsNote | null;
}

const KEY_GAP_MM = 5;
const MAP_GAP_MM = 6;
/**
 * Of the body's height: what of a key in large print would take more is printed as usual, its lines on frames before its yarns,
 * and all of it large on pages of its own.
 */
const MOST_KEY = 0.3;
/** The key beside the cells takes no more of the width than this, in shortest columns. */
const MOST_BESIDE = 1.8;

/** Share of the rows: fewer beside the chart would leave the column ragged and of little help. */
const LEAST_FITTING = 0.6;

export function layOutChart(input: ChartInput): ChartLayout {
  const chosen = chosenFor(input);
  if (!input.beside) return placed(input, chosen, null);
  return withRows(input, chosen) ?? withNote(input, input.beside, chosen);
}

function chosenFor(input: ChartInput): Chosen {
  const single = splitAmong(input, waysOf(input, false));
  const isSingle = single !== null && pagesOf(single.split) === 1;
  const chosen = isSingle ? single : splitAmong(input, waysOf(input, true));
  if (!chosen) throw new Error('the page has no room for three cells');
  return chosen;
}

/** A way to use a page. */
interface Way {
  readonly sheet: Sheet;
  readonly body: Area;
  readonly joined: boolean;
  readonly key: KeyLayout;
  readonly frames: FrameLines;
  readonly keyIsBeside: boolean;
  readonly room: Room;
}

interface Chosen {
  readonly split: Split;
  readonly way: Way;
}

/** The one that is liked best first. */
function waysOf(input: ChartInput, joined: boolean): Way[] {
  return [input.sheet, turned(input.sheet)].flatMap((sheet) => {
    const below = keyBelow(input, sheet, joined);
    const beside = keyBeside(input, sheet, joined);
    return beside ? [below, beside] : [below];
  });
}

/** Null where no way has room for three cells. */
function splitAmong({ chart, aspect, scale }: ChartInput, ways: readonly Way[]): Chosen | null {
  const { columns, rows } = chart;
  const rooms = ways.map(({ room }) => room);
  const split = splitChart({ columns, rows, aspect, cell: scale.cell, rooms });
  return split && { split, way: ways[split.room]! };
}

/** What is left for the cells beside head, numbers and marks. */
function roomIn({ chart, scale }: ChartInput, body: Area, joined: boolean): Room {
  return {
    width: body.width - 2 * rowNumbersMm(chart.rows, scale.numberMm),
    height: body.height - scale.headMm - 2 * aroundMm(scale, joined),
  };
}

/** Above and below the cells: the cords' numbers, and a line of join marks. */
function aroundMm({ numberMm, noteMm }: PrintScale, joined: boolean): number {
  return cordNumbersMm(numberMm) + (joined ? noteMm * 1.8 : 0);
}

function keyBelow(input: ChartInput, sheet: Sheet, joined: boolean): Way {
  const body = bodyOf(sheet);
  const { width, height } = roomIn(input, body, joined);
  const { map } = input.scale;
  const keyWidth = body.width - (joined ? map.width + MAP_GAP_MM : 0);
  const wished = keyIn(input, keyWidth, input.scale, joined);
  const mostMm = body.height * MOST_KEY;
  const key = wished.height > mostMm ? keyIn(input, keyWidth, printScales.standard, joined) : wished;
  const framesIn = (scale: PrintScale) => frameLines(input.repeats, keyWidth, scale.key, input.words);
  const wishedFrames = framesIn(input.scale);
  const frames = wished.height + wishedFrames.height > mostMm ? framesIn(printScales.standard) : wishedFrames;
  const told = key.height + frames.height;
  const taken = KEY_GAP_MM + (joined ? Math.max(told, map.height) : told);
  return { sheet, body, joined, key, frames, keyIsBeside: false, room: { width, height: height - taken } };
}

/** Null where the key would not fit into one column, or its names would be cut. */
function keyBeside(input: ChartInput, sheet: Sheet, joined: boolean): Way | null {
  const body = bodyOf(sheet);
  const { width, height } = roomIn(input, body, joined);
  const { map, headMm } = input.scale;
  const most = Math.max(input.scale.key.narrowestMm * MOST_BESIDE, joined ? map.width : 0);
  const key = keyIn(input, Number.POSITIVE_INFINITY, input.scale, joined, 1);
  const sideWidth = Math.max(key.columnWidth, joined ? map.width : 0);
  const frames = frameLines(input.repeats, sideWidth, input.scale.key, input.words);
  const tall = key.height + frames.height + (joined ? MAP_GAP_MM + map.height : 0);
  if (key.columnWidth > most || tall > body.height - headMm) return null;
  const taken = KEY_GAP_MM + sideWidth;
  return { sheet, body, joined, key, frames, keyIsBeside: true, room: { width: width - taken, height } };
}

function keyIn(
  { entries, words, colors }: ChartInput,
  width: number,
  { key: scale }: PrintScale,
  withHere: boolean,
  columns?: number,
): KeyLayout {
  const withColors = colors !== undefined;
  return layOutKey(entries, width, {
    scale,
    words,
    withHere,
    withColors,
    ...(columns !== undefined && { columns }),
  });
}

/**
 * The rows in words take what the cells can spare without another page, in the way that has room for most of them; null where
 * that is too few.
 */
function withRows(input: ChartInput, chosen: Chosen): ChartLayout | null {
  const wish = input.beside!;
  const widest = rowsBeside(input.chart, wish, chosen.split, input.scale).widthMm;
  let best: { readonly chosen: Chosen; readonly beside: RowsBeside } | null = null;
  for (const share of [1, 0.8, 0.6, 0.45]) {
    for (const way of waysOf(input, chosen.way.joined)) {
      const room = { ...way.room, width: way.room.width - widest * share };
      const split = splitAmong(input, [{ ...way, room }])?.split;
      if (!split || pagesOf(split) > pagesOf(chosen.split)) continue;
      const spare = way.room.width - longest(split.across) * split.cellWidth;
      const beside = rowsBeside(input.chart, wish, split, input.scale, spare);
      if (beside.fitting > (best?.beside.fitting ?? LEAST_FITTING)) best = { chosen: { split, way }, beside };
    }
    if (best?.beside.fitting === 1) break;
  }
  return best && placed(input, best.chosen, best.beside);
}

/** A note that has no room behind the title makes the head higher, and cells lower or fewer. */
function withNote(input: ChartInput, { rowsPage }: RowsBesideWish, chosen: Chosen): ChartLayout {
  const { scale, sheet } = input;
  const narrowest = Math.min(bodyOf(sheet).width, bodyOf(turned(sheet)).width);
  const note = rowsNote(input, rowsPage, chosen.split, narrowest);
  if (note.belowMm === 0) return { ...placed(input, chosen, null), note };
  const below = { ...input, scale: { ...scale, headMm: scale.headMm + note.belowMm } };
  return { ...placed(below, chosenFor(below), null), note };
}

function placed(input: ChartInput, { split, way }: Chosen, beside: RowsBeside | null): ChartLayout {
  const { sheet, body, joined, key, frames, keyIsBeside } = way;
  const { chart, scale } = input;
  const around = aroundMm(scale, joined);
  const y = body.y + scale.headMm + around;
  const cellsWidth = longest(split.across) * split.cellWidth;
  const numbers = rowNumbersMm(chart.rows, scale.numberMm);
  const sideWidth = Math.max(key.columnWidth, joined ? scale.map.width : 0);
  const right = body.x + body.width;
  const keyX = keyIsBeside ? right - sideWidth : body.x;
  const keyY = keyIsBeside
    ? body.y + scale.headMm
    : y + longest(split.down) * split.cellHeight + around + KEY_GAP_MM;
  const middle = body.x + (body.width - (keyIsBeside ? sideWidth + KEY_GAP_MM : 0) - cellsWidth) / 2;
  return {
    split,
    joined,
    sheet,
    body,
    x: beside ? body.x + numbers : middle,
    y,
    key,
    frames,
    keyApart: Math.min(key.scale.nameMm, frames.nameMm) < scale.key.nameMm,
    keyX,
    keyY,
    mapX: keyIsBeside ? keyX : right - scale.map.width,
    mapY: keyIsBeside ? keyY + key.height + frames.height + MAP_GAP_MM : keyY,
    beside,
    note: null,
  };
}
