/**
 * The chart on its pages: as few as possible, each with its numbers, its key, the marks that say which page joins
 * where, and a small map of all of them.
 */

import type { Chart } from '../chart/chart.ts';
import { arrow, cordNumbersMm, drawChartBlock, rowNumbersMm } from './chart-block.ts';
import { textWidthMm } from './faces/measure-text.ts';
import { drawKey, type KeyEntry, type KeyLayout, layOutKey } from './key.ts';
import { label } from './label.ts';
import type { CellsItem, Item, PathStep, TextItem } from './page.ts';
import type { Draft } from './page-foot.ts';
import { type Area, bodyOf, type Sheet, turned } from './papers.ts';
import { longest, pagesOf, type Room, type Split, type Stretch, splitChart } from './split-chart.ts';
import { inks, sizes } from './style.ts';

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
const MAP_MM = { width: 34, height: 30 } as const;

/** How many pages `chartPages` will make. */
export function countChartPages(input: Layable): number {
  return pagesOf(chosenSplit(input).split);
}

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
      ...(joined ? pageMap(input, split, acrossAt, downAt, body.x + body.width - MAP_MM.width, keyY) : []),
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

/** Page numbers of the pages around this one; 0 where there is none. */
interface Neighbours {
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
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

function neighboursInWords({ left, right, above, below }: Neighbours): string {
  const sides = [
    [left, 'at the left'],
    [right, 'at the right'],
    [above, 'above'],
    [below, 'below'],
  ] as const;
  return sides
    .filter(([page]) => page > 0)
    .map(([page, side], i) => (i === 0 ? `page ${page} joins ${side}` : `page ${page} ${side}`))
    .join(', ');
}

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly across: Stretch;
  readonly down: Stretch;
  readonly split: Split;
}

/** 'joins page 6' outside the numbers, at the corner or middle next to that page. */
function joinMarks(pages: Neighbours, { x, y, across, down, split }: Placed): Item[] {
  const width = (across.end - across.first) * split.cellWidth;
  const height = (down.end - down.first) * split.cellHeight;
  const aboveY = y - cordNumbersMm() - 1.4;
  const belowY = y + height + cordNumbersMm() + sizes.small + 0.4;
  const text = (page: number, at: number, baseline: number, align: TextItem['align']): Item =>
    label(at, baseline, `joins page ${page}`, {
      face: 'sans-bold',
      sizeMm: sizes.small,
      color: inks.accent,
      align,
      role: 'aside',
    });
  const mark = (steps: PathStep[]): Item => ({
    kind: 'path',
    steps,
    stroke: inks.accent,
    strokeMm: 0.3,
    cap: 'round',
  });
  const level = sizes.small * 0.32;
  const items: Item[] = [];
  for (const baseline of [aboveY, belowY]) {
    if (pages.left) {
      items.push(mark(arrow(x + 3, x, baseline - level, 2.6)), text(pages.left, x + 4, baseline, 'left'));
    }
    if (pages.right) {
      const end = x + width;
      items.push(
        mark(arrow(end - 3, end, baseline - level, 2.6)),
        text(pages.right, end - 4, baseline, 'right'),
      );
    }
  }
  for (const [page, baseline, way] of [
    [pages.above, aboveY, -1],
    [pages.below, belowY, 1],
  ] as const) {
    if (!page) continue;
    const middle = x + width / 2;
    const half = textWidthMm(`joins page ${page}`, 'sans-bold', sizes.small) / 2;
    items.push(mark(upright(middle - half - 0.5, baseline, way)), text(page, middle + 1, baseline, 'center'));
  }
  return items;
}

/** An arrow up (-1) or down (1) beside a line of text. */
function upright(x: number, baseline: number, way: 1 | -1): PathStep[] {
  const from = baseline - (way === 1 ? 2.2 : -0.2);
  const to = baseline - (way === 1 ? -0.2 : 2.2);
  return [
    ['M', x, from],
    ['L', x, to],
    ['M', x - 0.65, to - way * 0.75],
    ['L', x, to],
    ['L', x + 0.65, to - way * 0.75],
  ];
}

/** All chart pages as small boxes, this one filled. */
function pageMap(
  { firstPage }: ChartPagesInput,
  split: Split,
  acrossAt: number,
  downAt: number,
  x: number,
  y: number,
): Item[] {
  const top = y + 6.4;
  const across = split.across.length;
  const down = split.down.length;
  const cellAspect =
    (longest(split.across) * split.cellWidth) / Math.max(longest(split.down) * split.cellHeight, 0.001);
  const height = Math.min((MAP_MM.height - 7) / down, MAP_MM.width / across / cellAspect, 9);
  // Pages of a very long or very wide chart are not drawn in proportion: their boxes would be slivers.
  const width = Math.max(height * cellAspect, Math.min(5, MAP_MM.width / across));
  const numberMm = Math.min(2.4, height * 0.6, width * 0.5);
  const items: Item[] = [
    label(x, y + sizes.heading * 0.8, 'Pages', { face: 'serif-bold', sizeMm: sizes.heading, role: 'aside' }),
  ];
  for (let d = 0; d < down; d++) {
    for (let a = 0; a < across; a++) {
      const here = a === acrossAt && d === downAt;
      const box = { x: x + a * width, y: top + d * height, width, height };
      items.push({
        kind: 'box',
        ...box,
        fill: here ? inks.accent : inks.paper,
        stroke: inks.soft,
        strokeMm: Math.min(0.25, height / 8),
      });
      if (numberMm < 1.4) continue;
      items.push(
        label(box.x + width / 2, box.y + height / 2 + numberMm * 0.355, String(firstPage + d * across + a), {
          face: here ? 'sans-bold' : 'sans',
          sizeMm: numberMm,
          color: here ? inks.paper : inks.soft,
          align: 'center',
          role: 'aside',
        }),
      );
    }
  }
  return items;
}
