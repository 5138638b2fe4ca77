/**
 * The map of the chart: the whole of it small, with the frame and number of each page over it. Rows and cords that begin
 * and end the pages are told along the edges, so that a chart of a hundred pages is found through as well.
 */

import { textWidthMm, wrapText } from '../faces/measure-text.ts';
import type { Draft } from '../flow/page-foot.ts';
import { FIRST_HEAD_MM, firstHead } from '../flow/page-head.ts';
import { label } from '../page/label.ts';
import type { Item, PlainItem } from '../page/page.ts';
import { type Area, bodyOf } from '../page/papers.ts';
import { inks, LEADING } from '../page/style.ts';
import { drawSmallChart } from './chart-block.ts';
import { type ChartInput, layOutChart } from './chart-layout.ts';
import { keyPages } from './key-pages.ts';
import { longest, pagesOf, REPEATED, type Split, type Stretch, spanOf } from './split-chart.ts';

/** None where the chart stands on one page. `first`: of the chart's part, from 1. */
export function mapPage(input: ChartInput, first: number): Draft[] {
  const { split, keyApart } = layOutChart(input);
  const firstPage = first + (keyApart ? keyPages(input).length : 0);
  const { body } = input.scale.type;
  const pages = pagesOf(split);
  if (pages === 1) return [];
  const { map } = input.words;
  const area = bodyOf(input.sheet);
  const introduction = wrapText(map.introduction(pages), 'sans', body, area.width * 0.9);
  const top = area.y + FIRST_HEAD_MM - 3 + introduction.length * body * LEADING + 5;
  return [
    {
      sheet: input.sheet,
      title: map.title,
      items: [
        ...firstHead(area, map.title, input.accent),
        ...introduction.map((line, i) =>
          label(area.x, area.y + FIRST_HEAD_MM - 3 + (i + 1) * body * LEADING, line, {
            sizeMm: body,
            ...(i === 0 && { role: 'paragraph' }),
          }),
        ),
        ...mapIn(input, split, firstPage, { ...area, y: top, height: area.y + area.height - top }),
      ],
    },
  ];
}

const GAP_MM = 2;
/** Of the pale line under each frame's dark one. */
const HALO_MM = 1.1;
const LEAST_FRAME_MM = 9;

interface MapFrame {
  readonly split: Split;
  readonly x: number;
  readonly y: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
}

function mapIn(input: ChartInput, split: Split, firstPage: number, area: Area): Item[] {
  const { chart, aspect, words } = input;
  const { small: rangeMm } = input.scale.type;
  const ranges = split.down.map((stretch) => words.rows(spanOf(stretch)));
  const aside = Math.max(...ranges.map((range) => textWidthMm(range, 'sans', rangeMm))) + GAP_MM;
  const above = rangeMm * LEADING + GAP_MM;
  const room = { width: area.width - aside - HALO_MM / 2, height: area.height - above - HALO_MM / 2 };
  const inProportion = Math.min(room.width / aspect / chart.columns, room.height / chart.rows);
  // Pages of a very long or very wide chart are not drawn in proportion: their frames would be slivers.
  const least = (stretches: readonly Stretch[]) => LEAST_FRAME_MM / (longest(stretches) - REPEATED / 2);
  const cellWidth = Math.min(
    Math.max(inProportion * aspect, least(split.across)),
    room.width / chart.columns,
  );
  const cellHeight = Math.min(Math.max(inProportion, least(split.down)), room.height / chart.rows);
  const left = area.x + aside + (room.width - chart.columns * cellWidth) / 2;
  const frame: MapFrame = { split, x: left, y: area.y + above, cellWidth, cellHeight };
  const pages = pagesOf(split);
  return [
    { kind: 'figure', alt: words.map.alt(pages), items: [...wholeChart(input, frame), ...framesOf(frame)] },
    ...numbers(frame, firstPage),
    ...cordRanges(input, frame),
    ...rowRanges(ranges, frame, rangeMm),
  ];
}

function wholeChart({ chart, mapInks }: ChartInput, { x, y, cellWidth, cellHeight }: MapFrame): PlainItem[] {
  const width = chart.columns * cellWidth;
  const height = chart.rows * cellHeight;
  return [
    drawSmallChart({ chart, x, y, cellWidth, cellHeight, cellInks: mapInks }),
    // Paler, so that frames and numbers are seen on any yarn.
    { kind: 'box', x, y, width, height, fill: inks.paper, opacity: 0.35, stroke: inks.soft, strokeMm: 0.2 },
  ];
}

/** The edges between pages, in the middle of what they share. */
function framesOf({ split, x, y, cellWidth, cellHeight }: MapFrame): PlainItem[] {
  const across = bounds(split.across, x, cellWidth);
  const down = bounds(split.down, y, cellHeight);
  const whole = { left: across[0]!, right: across.at(-1)!, top: down[0]!, bottom: down.at(-1)! };
  const lines = (color: string, widthMm: number): PlainItem[] => [
    ...across.map(
      (at): PlainItem => ({ kind: 'rule', x1: at, x2: at, y1: whole.top, y2: whole.bottom, widthMm, color }),
    ),
    ...down.map(
      (at): PlainItem => ({ kind: 'rule', y1: at, y2: at, x1: whole.left, x2: whole.right, widthMm, color }),
    ),
  ];
  return [...lines(inks.paper, HALO_MM), ...lines(inks.text, 0.45)];
}

/** Where pages begin and end, one more than there are pages. */
function bounds(stretches: readonly Stretch[], from: number, cellMm: number): number[] {
  const starts = stretches.map(({ first, repeated }) => from + (first + repeated / 2) * cellMm);
  return [...starts, from + stretches.at(-1)!.end * cellMm];
}

/** Each page's number on a round of paper, in the middle of its frame. It leads to the page. */
function numbers({ split, x, y, cellWidth, cellHeight }: MapFrame, firstPage: number): Item[] {
  const across = bounds(split.across, x, cellWidth);
  const down = bounds(split.down, y, cellHeight);
  const digits = String(firstPage + pagesOf(split) - 1).length;
  const least = Math.min(smallest(across), smallest(down));
  const sizeMm = Math.min(6, least / (0.6 * digits + 1.1));
  const width = sizeMm * (0.6 * digits + 0.8);
  const height = sizeMm * 1.4;
  return split.down.flatMap((_, d) =>
    split.across.flatMap((_, a): Item[] => {
      const middle = (across[a]! + across[a + 1]!) / 2;
      const level = (down[d]! + down[d + 1]!) / 2;
      const page = firstPage + d * split.across.length + a;
      const box = { x: middle - width / 2, y: level - height / 2, width, height };
      return [
        { kind: 'box', ...box, radius: height / 2, fill: inks.paper, stroke: inks.soft, strokeMm: 0.2 },
        label(middle, level + sizeMm * 0.355, String(page), {
          face: 'sans-bold',
          sizeMm,
          align: 'center',
          role: 'aside',
          link: page,
        }),
      ];
    }),
  );
}

function smallest(bounds: readonly number[]): number {
  return bounds.slice(1).reduce((least, at, i) => Math.min(least, at - bounds[i]!), Number.POSITIVE_INFINITY);
}

/** Those that have room above their page. */
function cordRanges({ words, scale }: ChartInput, { split, x, y, cellWidth }: MapFrame): Item[] {
  const { small: rangeMm } = scale.type;
  const across = bounds(split.across, x, cellWidth);
  return split.across.flatMap((stretch, i): Item[] => {
    const { first, last } = spanOf(stretch);
    const room = across[i + 1]! - across[i]! - 1;
    const text = [words.cords({ first, last }), `${first}–${last}`].find(
      (each) => textWidthMm(each, 'sans', rangeMm) <= room,
    );
    if (text === undefined) return [];
    const middle = (across[i]! + across[i + 1]!) / 2;
    return [label(middle, y - GAP_MM, text, range(rangeMm, 'center'))];
  });
}

/** Every one, or where the pages are low as many as have room beside them. */
function rowRanges(
  ranges: readonly string[],
  { split, x, y, cellHeight }: MapFrame,
  rangeMm: number,
): Item[] {
  const down = bounds(split.down, y, cellHeight);
  const every = Math.ceil((rangeMm * 1.3) / Math.max(smallest(down), 0.1));
  return ranges.flatMap((text, i): Item[] =>
    i % every === 0
      ? [label(x - GAP_MM, (down[i]! + down[i + 1]!) / 2 + rangeMm * 0.355, text, range(rangeMm, 'right'))]
      : [],
  );
}

function range(sizeMm: number, align: 'center' | 'right') {
  return { sizeMm, color: inks.soft, align, role: 'aside' } as const;
}
