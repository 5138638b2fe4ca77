/**
 * The chart on its pages: as few as possible, each with its numbers, its key, the marks that say which page joins
 * where, and a small map of all of them.
 */

import type { Chart } from '../chart/chart.ts';
import { cordNumbersMm, drawChartBlock, rowNumbersMm } from './chart-block.ts';
import { joinMarks, type Neighbours, neighboursInWords } from './join-marks.ts';
import { drawKey, type KeyEntry, type KeyLayout, layOutKey } from './key.ts';
import { label } from './label.ts';
import type { CellsItem, Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import { MAP_MM, pageMap } from './page-map.ts';
import { type Area, bodyOf, type Sheet, turned } from './papers.ts';
import { longest, pagesOf, type Room, type Split, type Stretch, splitChart } from './split-chart.ts';
import { inks } from './style.ts';

export interface ChartPagesInput {
  readonly chart: Chart;
  /** A knot's width over its height. */
  readonly aspect: number;
  readonly sheet: Sheet;
  readonly entries: readonly KeyEntry[];
  readonly cellInks: CellsItem['inks'];
  /** The number of the first chart page, from 1. */
  readonly firstPage: number;
}

type Layable = Omit<ChartPagesInput, 'firstPage'>;

/** Title and range above the chart. */
const HEAD_MM = 11;
/** A line of join marks above and below the numbers, where there are several pages. */
const JOINS_MM = 4.6;
const KEY_GAP_MM = 5;

export function chartPages(input: ChartPagesInput): Draft[] {
  const chosen = chosenSplit(input);
  const frame = frameOf(input, chosen);
  return chosen.split.down.flatMap((_, downAt) =>
    chosen.split.across.map((_, acrossAt) => chartPage(input, chosen, frame, acrossAt, downAt)),
  );
}

/** The split, and whether its pages carry join marks and a map. */
interface Chosen {
  readonly split: Split;
  readonly joined: boolean;
}

function chosenSplit(input: Layable): Chosen {
  const single = split(input, false);
  return pagesOf(single.split) === 1 ? single : split(input, true);
}

function split(input: Layable, joined: boolean): Chosen {
  const { columns, rows } = input.chart;
  const upright = roomFor(input, input.sheet, joined);
  const onItsSide = roomFor(input, turned(input.sheet), joined);
  return { split: splitChart({ columns, rows, aspect: input.aspect, upright, onItsSide }), joined };
}

function keyFor({ entries }: Layable, body: Area, joined: boolean): KeyLayout {
  return layOutKey(entries, body.width - (joined ? MAP_MM.width + 6 : 0));
}

function keyHeight(key: KeyLayout, joined: boolean): number {
  return joined ? Math.max(key.height, MAP_MM.height) : key.height;
}

/** What is left for the cells beside numbers, marks and key. */
function roomFor(input: Layable, sheet: Sheet, joined: boolean): Room {
  const body = bodyOf(sheet);
  const around = HEAD_MM + 2 * cordNumbersMm() + (joined ? 2 * JOINS_MM : 0) + KEY_GAP_MM;
  return {
    width: body.width - 2 * rowNumbersMm(input.chart.rows),
    height: body.height - around - keyHeight(keyFor(input, body, joined), joined),
  };
}

/** What is alike on all chart pages: they place the chart as if each were full, and the key below it. */
interface Frame {
  readonly sheet: Sheet;
  readonly body: Area;
  /** Top left corner of the cells. */
  readonly x: number;
  readonly y: number;
  readonly keyY: number;
  readonly key: readonly Item[];
}

function frameOf(input: Layable, { split, joined }: Chosen): Frame {
  const sheet = split.turned ? turned(input.sheet) : input.sheet;
  const body = bodyOf(sheet);
  const around = cordNumbersMm() + (joined ? JOINS_MM : 0);
  const y = body.y + HEAD_MM + around;
  const keyY = y + longest(split.down) * split.cellHeight + around + KEY_GAP_MM;
  const key = drawKey(input.entries, keyFor(input, body, joined), body.x, keyY, input.cellInks);
  return {
    sheet,
    body,
    x: body.x + (body.width - longest(split.across) * split.cellWidth) / 2,
    y,
    keyY,
    key,
  };
}

function chartPage(
  input: ChartPagesInput,
  { split, joined }: Chosen,
  { sheet, body, x, y, keyY, key }: Frame,
  acrossAt: number,
  downAt: number,
): Draft {
  const { chart, cellInks } = input;
  const { cellWidth, cellHeight } = split;
  const across = split.across[acrossAt]!;
  const down = split.down[downAt]!;
  const range = rangeOf(across, down);
  const pages = neighbours(input, split, acrossAt, downAt);
  return {
    sheet,
    title: `Chart, ${range}`,
    items: [
      ...head(body, range),
      ...drawChartBlock({ chart, x, y, cellWidth, cellHeight, across, down, cellInks }),
      ...(joined ? joinMarks(pages, { x, y, across, down, split }) : []),
      ...key,
      ...(joined
        ? pageMap(input.firstPage, split, acrossAt, downAt, body.x + body.width - MAP_MM.width, keyY)
        : []),
    ],
    middle: range,
    below: neighboursInWords(pages),
    checkLine: true,
  };
}

function rangeOf(across: Stretch, down: Stretch): string {
  const span = ({ first, end }: Stretch) => (end - first === 1 ? `${end}` : `${first + 1}–${end}`);
  return `rows ${span(down)}, cords ${span(across)}`;
}

function head(body: Area, range: string): Item[] {
  const y = body.y + 6;
  return [
    label(body.x, y, 'Chart', { face: 'serif-bold', sizeMm: 6.4, role: 'title' }),
    label(body.x + body.width, y, range, { color: inks.soft, align: 'right', role: 'paragraph' }),
  ];
}

function neighbours(
  { firstPage }: ChartPagesInput,
  split: Split,
  acrossAt: number,
  downAt: number,
): Neighbours {
  const page = (across: number, down: number) =>
    across < 0 || down < 0 || across >= split.across.length || down >= split.down.length
      ? 0
      : firstPage + down * split.across.length + across;
  return {
    left: page(acrossAt - 1, downAt),
    right: page(acrossAt + 1, downAt),
    above: page(acrossAt, downAt - 1),
    below: page(acrossAt, downAt + 1),
  };
}
