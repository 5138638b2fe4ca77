/**
 * The chart on its pages, each with its numbers, its key, the marks that say which page joins where, and a small map of
 * all of them.
 */

import { textWidthMm } from '../faces/measure-text.ts';
import type { Draft } from '../flow/page-foot.ts';
import { accentBar } from '../flow/page-head.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import { sizeToFit } from '../page/size-to-fit.ts';
import type { Alike } from '../page/stamped.ts';
import { inks } from '../page/style.ts';
import { drawChartBlock, rowNumbersMm } from './chart-block.ts';
import { type ChartInput, type ChartLayout, layOutChart } from './chart-layout.ts';
import { spansOf } from './frame-lines.ts';
import { joinMarks, type Neighbours, neighbourList } from './join-marks.ts';
import { drawKey, keyHeadingMm } from './key.ts';
import { keyPages } from './key-pages.ts';
import { pageMap } from './page-map.ts';
import { pagesOf, type Split, type Stretch, spanOf } from './split-chart.ts';

/** `first`: the number of the part's first page, from 1. */
export function chartPages(input: ChartInput, first: number): Draft[] {
  const layout = layOutChart(input);
  const { across, down } = layout.split;
  const key = layout.keyApart ? keyPages(input) : [];
  const firstPage = first + key.length;
  const isTold = key.length > 0;
  const alike: Alike = new Map();
  const pages = down.flatMap((_, downAt) =>
    across.map((_, acrossAt) => chartPage(input, layout, { firstPage, acrossAt, downAt, isTold, alike })),
  );
  return [...key, ...pages];
}

export function countChartPages(input: ChartInput): number {
  const { split, keyApart } = layOutChart(input);
  return pagesOf(split) + (keyApart ? keyPages(input).length : 0);
}

/** Those that show cells: the key's own pages are not counted. */
export function countCellPages(input: ChartInput): number {
  return pagesOf(layOutChart(input).split);
}

/** Which page it is. */
interface At {
  /** That shows cells. */
  readonly firstPage: number;
  readonly acrossAt: number;
  readonly downAt: number;
  /** Whether the key has been told on pages of its own. */
  readonly isTold: boolean;
  readonly alike: Alike;
}

function chartPage(input: ChartInput, layout: ChartLayout, at: At): Draft {
  const { words, title } = input;
  const { split, sheet } = layout;
  const across = split.across[at.acrossAt]!;
  const down = split.down[at.downAt]!;
  const range = words.range(spanOf(down), spanOf(across));
  const pages = neighbours(split, at);
  const isAgain = at.isTold || at.acrossAt + at.downAt > 0;
  return {
    sheet,
    title: `${title}, ${range}`,
    items: [
      ...head(input, layout, range),
      ...cellsOfPage(input, layout, across, down, at.alike),
      ...joinsOfPage(input, layout, across, down, pages),
      ...rowsOfPage(input, layout, across, down),
      ...keyOfPage(input, layout, across, down, isAgain),
      ...layout.frames.draw(layout.keyX, layout.keyY + layout.key.height, isAgain),
      ...mapOfPage(input, layout, at),
    ],
    middle: range,
    below: words.joining(neighbourList(pages)),
    checkLine: true,
  };
}

function head({ title, scale, accent }: ChartInput, { body, note }: ChartLayout, range: string): Item[] {
  const y = body.y + scale.titleMm + 1.4;
  const rangeWidth = textWidthMm(range, 'sans', rangeMm(scale));
  const titleMm = sizeToFit(title, 'serif-bold', scale.titleMm, body.width - rangeWidth - 4);
  const right = body.x + body.width;
  const look = { sizeMm: rangeMm(scale), color: inks.soft, align: 'right' } as const;
  return [
    accentBar(body.x, body.y, accent),
    label(body.x, y, title, { face: 'serif-bold', sizeMm: titleMm, role: 'title' }),
    ...(note?.draw(body, range, y, body.y + scale.headMm) ?? []),
    label(right, y, range, { ...look, role: 'paragraph' }),
  ];
}

/** Em of the range above the chart. */
function rangeMm({ type }: ChartInput['scale']): number {
  return type.body;
}

function cellsOfPage(
  input: ChartInput,
  { split, joined, x, y }: ChartLayout,
  across: Stretch,
  down: Stretch,
  alike: Alike,
): Item[] {
  const { chart, repeats, cellInks, scale, words, accent } = input;
  const { cellWidth, cellHeight } = split;
  return drawChartBlock({
    chart,
    x,
    y,
    cellWidth,
    cellHeight,
    across,
    down,
    cellInks,
    numberMm: scale.numberMm,
    accent,
    ...(joined && { alike }),
    lifts: true,
    repeats,
    alt: [words.alt(spanOf(down), spanOf(across)), ...framedHere(input, across, down)].join(' '),
  });
}

/** A sentence for each frame of which the page shows some cells. */
function framedHere({ repeats, words }: ChartInput, across: Stretch, down: Stretch): string[] {
  return repeats
    .filter(
      ({ fromRow, toRow, fromColumn, columns }) =>
        fromRow < down.end &&
        toRow >= down.first &&
        fromColumn < across.end &&
        fromColumn + columns > across.first,
    )
    .map((repeat) => `${words.framed(spansOf(repeat))}.`);
}

function joinsOfPage(
  { scale, words, accent }: ChartInput,
  { split, joined, x, y }: ChartLayout,
  across: Stretch,
  down: Stretch,
  pages: Neighbours,
): Item[] {
  if (!joined) return [];
  const { noteMm: sizeMm, numberMm } = scale;
  return joinMarks(pages, { x, y, across, down, split, joins: words.joins, sizeMm, numberMm, accent });
}

function rowsOfPage(
  { chart, scale }: ChartInput,
  { beside, split, x, y }: ChartLayout,
  across: Stretch,
  down: Stretch,
): Item[] {
  const width = (across.end - across.first) * split.cellWidth;
  return beside?.draw(across, down, x + width + rowNumbersMm(chart.rows, scale.numberMm), y) ?? [];
}

function keyOfPage(
  { chart, entries, cellInks, words, colors, namesPage }: ChartInput,
  { key, keyX, keyY }: ChartLayout,
  across: Stretch,
  down: Stretch,
  isAgain: boolean,
): Item[] {
  // What the page before shows as well is counted there, so that the pages add up to the chart.
  const here = new Uint32Array(256);
  for (let row = down.first + down.repeated; row < down.end; row++) {
    const end = row * chart.columns + across.end;
    for (let cell = end - newIn(across); cell < end; cell++) here[chart.cells[cell]!]!++;
  }
  return drawKey(entries, key, {
    x: keyX,
    y: keyY,
    cellInks,
    words,
    here,
    isAgain,
    namesPage,
    ...(colors && { colors }),
  });
}

/** Cells that the page before does not show. */
function newIn({ first, end, repeated }: Stretch): number {
  return end - first - repeated;
}

function mapOfPage({ words, accent, scale }: ChartInput, layout: ChartLayout, at: At): Item[] {
  if (!layout.joined) return [];
  const { mapX: x, mapY: y } = layout;
  const { key, map } = scale;
  const head = { headingMm: keyHeadingMm(key), headMm: key.headingMm };
  const place = { x, y, heading: words.pages, accent, scale: map, ...head };
  return pageMap(at.firstPage, layout.split, at.acrossAt, at.downAt, place);
}

function neighbours(split: Split, { firstPage, acrossAt, downAt }: At): Neighbours {
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
