/**
 * A stretch of the chart with all that a maker needs to find her place: every row numbered, with an arrow, on the side
 * where it starts; cords numbered above and below; rules after every fifth and tenth row and cord, counted from 1.
 * Chart pages and the picture of the whole chart are drawn by this.
 */

import { type Chart, goesRight } from '../../chart/chart.ts';
import type { Repeat } from '../../chart/repeats.ts';
import { BARE } from '../../design/codes.ts';
import { label } from '../page/label.ts';
import type { CellsItem, Item, PathItem, PathStep, PlainItem, TextItem } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { type Alike, stampedOnce } from '../page/stamped.ts';
import { inks, NUMBER_MM, ruleMm } from '../page/style.ts';
import { liftMarks } from './lift-marks.ts';
import { repeatFrames } from './repeat-frames.ts';
import type { Stretch } from './split-chart.ts';

export interface ChartBlock {
  readonly chart: Chart;
  /** Top left corner of the cells. */
  readonly x: number;
  readonly y: number;
  readonly cellWidth: number;
  readonly cellHeight: number;
  readonly across: Stretch;
  readonly down: Stretch;
  readonly cellInks: CellsItem['inks'];
  /** Em of the numbers: `NUMBER_MM` where absent. */
  readonly numberMm?: number;
  /** Of the line that cuts off what the page before shows as well. */
  readonly accent?: string;
  /** Where other pages show more of the chart, with the same rules, rows or cords: what they show alike. */
  readonly alike?: Alike;
  /** Whether cords to be lifted are marked. */
  readonly lifts?: boolean;
  /** Whose first repeats are framed. */
  readonly repeats?: readonly Repeat[];
  /** The block in words, for those who can't see it. */
  readonly alt?: string;
}

/** Room that the numbers of rows take at either side of the cells, in mm. */
export function rowNumbersMm(rows: number, numberMm = NUMBER_MM): number {
  return numberMm * (0.6 * String(rows).length + 1.9);
}

/** Room that the numbers of cords take above and below the cells, in mm. */
export function cordNumbersMm(numberMm = NUMBER_MM): number {
  return numberMm * 1.6;
}

export function drawChartBlock(block: ChartBlock): Item[] {
  const numberMm = Math.min(block.numberMm ?? NUMBER_MM, block.cellHeight * 1.2);
  // Neighbours of a number stand on the other side. Where rows are too low for legible numbers, only each tenth row and the one after it are numbered.
  const everyRow = numberMm > (block.numberMm ?? NUMBER_MM) * 0.55;
  const rowNumberMm = everyRow ? numberMm : (block.numberMm ?? NUMBER_MM);
  const { x, y } = block;
  const right = x + widthOf(block);
  const bottom = y + heightOf(block);
  const again = (key: string, items: () => PlainItem[], left: number, top: number): Item[] =>
    block.alike ? stampedOnce(block.alike, key, items, left, top) : items();
  const [thin, ...thick] = rules(block);
  const cords = `${block.across.first}-${block.across.end}`;
  const rows = `${block.down.first}-${block.down.end}`;
  const size = `${block.across.end - block.across.first} x ${block.down.end - block.down.first}`;
  const cordNumbersAt = (side: 0 | 1) => () => cordNumbers(block, block.numberMm ?? NUMBER_MM)[side];
  const rowNumbersAt = (side: 0 | 1) => () => rowNumbers(block, rowNumberMm, everyRow)[side];
  return [
    cells(block),
    bareMarks(block),
    ...veil(block),
    ...repeatedIn(block).flatMap((strip) =>
      again(`hatching ${strip.width} x ${strip.height}`, () => [hatching(strip)], strip.x, strip.y),
    ),
    ...again(`rules of ${size}`, () => [thin!], x, y),
    ...thick,
    ...repeatFrames({ ...block, repeats: block.repeats ?? [] }),
    ...(block.lifts ? liftMarks(block) : []),
    ...again(`above ${cords}`, cordNumbersAt(0), x, y),
    ...again(`below ${cords}`, cordNumbersAt(1), x, bottom),
    ...again(`left ${rows}`, rowNumbersAt(0), x, y),
    ...again(`right ${rows}`, rowNumbersAt(1), right, y),
  ];
}

function widthOf({ across, cellWidth }: ChartBlock): number {
  return (across.end - across.first) * cellWidth;
}

function heightOf({ down, cellHeight }: ChartBlock): number {
  return (down.end - down.first) * cellHeight;
}

function cells(block: ChartBlock): CellsItem {
  const { chart, x, y, cellWidth, cellHeight, across, down, cellInks, alt } = block;
  const columns = across.end - across.first;
  const rows = down.end - down.first;
  const codes = new Uint8Array(columns * rows);
  for (let r = 0; r < rows; r++) {
    const from = (down.first + r) * chart.columns + across.first;
    codes.set(chart.cells.subarray(from, from + columns), r * columns);
  }
  return {
    kind: 'cells',
    x,
    y,
    cellWidth,
    cellHeight,
    columns,
    rows,
    codes,
    inks: cellInks,
    symbolMm: Math.min(cellWidth, cellHeight),
    ...(alt !== undefined && { alt }),
  };
}

/** The whole chart too small for symbols, as on a map of its pages. */
export function drawSmallChart({
  chart,
  ...place
}: Pick<ChartBlock, 'chart' | 'x' | 'y' | 'cellWidth' | 'cellHeight' | 'cellInks'>): CellsItem {
  const { cellInks, ...rest } = place;
  const { columns, rows, cells: codes } = chart;
  return { kind: 'cells', ...rest, columns, rows, codes, inks: cellInks };
}

/** The open diamond of a bare cell, around its middle; `size` is that of the cell. */
export function bareMark(x: number, y: number, size: number): PathStep[] {
  const reach = size * 0.17;
  return [['M', x, y - reach], ['L', x + reach, y], ['L', x, y + reach], ['L', x - reach, y], ['Z']];
}

function bareMarks({ chart, x, y, cellWidth, cellHeight, across, down }: ChartBlock): PathItem {
  const steps: PathStep[] = [];
  const size = Math.min(cellWidth, cellHeight);
  for (let r = down.first; r < down.end; r++) {
    for (let c = across.first; c < across.end; c++) {
      if (chart.cells[r * chart.columns + c] !== BARE) continue;
      steps.push(
        ...bareMark(x + (c - across.first + 0.5) * cellWidth, y + (r - down.first + 0.5) * cellHeight, size),
      );
    }
  }
  return { kind: 'path', steps, stroke: inks.soft, strokeMm: Math.min(0.2, size * 0.05) };
}

/** What the page before shows as well: paler, hatched, and cut off by a dashed line. */
function repeatedIn(block: ChartBlock): Area[] {
  const { x, y, across, down, cellWidth, cellHeight } = block;
  const width = widthOf(block);
  const height = heightOf(block);
  const left = across.repeated * cellWidth;
  const top = down.repeated * cellHeight;
  const strips = [
    { x, y, width, height: top },
    { x, y: y + top, width: left, height: height - top },
  ];
  return strips.filter((strip) => strip.width > 0 && strip.height > 0);
}

/** Symbols on white are only hatched: a printer of one ink would break them up into dots. */
function veil(block: ChartBlock): PlainItem[] {
  if (Object.values(block.cellInks).every(({ fill }) => fill === inks.paper)) return [];
  return repeatedIn(block).map((strip) => ({ kind: 'box', ...strip, fill: inks.paper, opacity: 0.6 }));
}

function hatching(strip: Area): PathItem {
  return { kind: 'path', steps: hatch(strip), stroke: inks.soft, strokeMm: 0.12, opacity: 0.7 };
}

const HATCH_MM = 2.2;

/** Parallel lines at 45 degrees through a box. */
function hatch({ x, y, width, height }: Area): PathStep[] {
  const steps: PathStep[] = [];
  for (let at = HATCH_MM; at < width + height; at += HATCH_MM) {
    const before = Math.max(0, at - height);
    const after = Math.min(at, width);
    steps.push(['M', x + before, y + (at - before)], ['L', x + after, y + (at - after)]);
  }
  return steps;
}

/** Every line thin, and over these the thick ones. */
function rules(block: ChartBlock): PathItem[] {
  const { x, y, cellWidth, cellHeight, across, down, chart } = block;
  const width = widthOf(block);
  const height = heightOf(block);
  const thin: PathStep[] = [];
  const fifths: PathStep[] = [];
  const tenths: PathStep[] = [];
  const joins: PathStep[] = [];
  // A line lies after `count` rows or cords, counted from the chart's first one.
  const put = (count: number, whole: number, repeatedEnd: number, line: readonly PathStep[]) => {
    thin.push(...line);
    if (count === repeatedEnd) joins.push(...line);
    else if (count === 0 || count === whole || count % 10 === 0) tenths.push(...line);
    else if (count % 5 === 0) fifths.push(...line);
  };
  for (let c = across.first; c <= across.end; c++) {
    const at = x + (c - across.first) * cellWidth;
    const joinAt = across.repeated > 0 ? across.first + across.repeated : -1;
    put(c, chart.columns, joinAt, [
      ['M', at, y],
      ['L', at, y + height],
    ]);
  }
  for (let r = down.first; r <= down.end; r++) {
    const at = y + (r - down.first) * cellHeight;
    const joinAt = down.repeated > 0 ? down.first + down.repeated : -1;
    put(r, chart.rows, joinAt, [
      ['M', x, at],
      ['L', x + width, at],
    ]);
  }
  const fine = Math.min(1, Math.min(cellWidth, cellHeight) / 3);
  const line = (steps: PathStep[], widthMm: number, stroke: string): PathItem => ({
    kind: 'path',
    steps,
    stroke,
    strokeMm: widthMm * fine,
  });
  return [
    line(thin, ruleMm.thin, '#8d857a'),
    // Dark rules would be lost on dark yarns: a pale edge keeps them in sight.
    { ...line([...fifths, ...tenths], ruleMm.tenth * 1.5, inks.paper), opacity: 0.45 },
    line(fifths, ruleMm.fifth, '#4b453d'),
    { ...line(tenths, ruleMm.tenth, inks.text), cap: 'round' },
    { ...line(joins, ruleMm.tenth, block.accent ?? inks.text), dashMm: [2.2, 1.4] },
  ];
}

function numberText(x: number, y: number, count: number, sizeMm: number, align: TextItem['align']): TextItem {
  const tenth = count % 10 === 0;
  const face = tenth ? 'sans-bold' : 'sans';
  return label(x, y, String(count), {
    face,
    sizeMm,
    color: tenth ? inks.text : inks.soft,
    align,
    role: 'aside',
  });
}

/**
 * Above and below the cells: cord 1, every fifth cord, and the first and last one shown, unless a neighbour's number stands in
 * the way.
 */
function cordNumbers(block: ChartBlock, numberMm: number): [above: PlainItem[], below: PlainItem[]] {
  const { x, y, cellWidth, across, chart } = block;
  const room = numberMm * (0.6 * String(chart.columns).length + 0.5);
  const step = [5, 10, 50, 100].find((each) => each * cellWidth >= room) ?? 100;
  const counts = new Set<number>();
  for (let count = across.first + 1; count <= across.end; count++) if (count % step === 0) counts.add(count);
  for (const count of [across.first + 1, across.end]) {
    if ([...counts].every((other) => Math.abs(other - count) * cellWidth >= room)) counts.add(count);
  }
  const at = (baseline: number) =>
    [...counts].map((count) => {
      const middle = x + (count - across.first - 0.5) * cellWidth;
      return numberText(middle, baseline, count, numberMm, 'center');
    });
  return [at(y - numberMm * 0.6), at(y + heightOf(block) + numberMm * 1.25)];
}

/** With their arrows: of the rows that go to the right, and of those that go to the left. */
function rowNumbers(
  block: ChartBlock,
  numberMm: number,
  everyRow: boolean,
): [toTheRight: PlainItem[], toTheLeft: PlainItem[]] {
  const { x, y, down, cellHeight, chart } = block;
  const right = x + widthOf(block);
  const reach = numberMm * 0.85;
  const gap = numberMm * 0.45;
  const sides = {
    left: { arrows: [] as PathStep[], numbers: [] as PlainItem[] },
    right: { arrows: [] as PathStep[], numbers: [] as PlainItem[] },
  };
  for (let row = down.first; row < down.end; row++) {
    const count = row + 1;
    if (!everyRow && count % 10 > 1) continue;
    const middle = y + (row - down.first + 0.5) * cellHeight;
    // Figures are about 0.71 em high.
    const baseline = middle + numberMm * 0.355;
    const side = goesRight(chart.startCorner, row) ? 'left' : 'right';
    // Away from the cells.
    const out = side === 'left' ? -1 : 1;
    const edge = side === 'left' ? x : right;
    const { arrows, numbers } = sides[side];
    arrows.push(...arrow(edge + out * (gap + reach), edge + out * gap, middle, numberMm));
    const numberX = edge + out * (gap + reach + numberMm * 0.3);
    numbers.push(numberText(numberX, baseline, count, numberMm, side === 'left' ? 'right' : 'left'));
  }
  const look = { stroke: inks.text, strokeMm: numberMm * 0.085, cap: 'round' } as const;
  const drawn = ({ arrows, numbers }: (typeof sides)['left']): PlainItem[] =>
    arrows.length === 0 ? [] : [{ kind: 'path', steps: arrows, ...look }, ...numbers];
  return [drawn(sides.left), drawn(sides.right)];
}

/** A level arrow whose head is at `to`. */
export function arrow(from: number, to: number, y: number, sizeMm: number): PathStep[] {
  const back = Math.sign(from - to) * sizeMm * 0.28;
  const wing = sizeMm * 0.24;
  return [
    ['M', from, y],
    ['L', to, y],
    ['M', to + back, y - wing],
    ['L', to, y],
    ['L', to + back, y + wing],
  ];
}
