/**
 * The tick sheet: a box for each row, ten to a line, so that a place is found again at a glance; and what is reached at the end of
 * each line. The times of all rows, of mounting and of finishing add up to the time that the pattern tells.
 */
import { type Chart, goesRight } from '../chart/chart.ts';
import { rowTallies } from '../tying/steps/row-tallies.ts';
import { tyingOrder } from '../tying/steps/tying-order.ts';
import { arrow } from './chart-block.ts';
import { type Flow, newFlow, paragraph } from './flow.ts';
import { label } from './label.ts';
import type { GroupItem, Item, PathStep, Structure, TextItem } from './page.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, sizes } from './style.ts';
import { ticksWords } from './words/ticks-words.ts';

const IN_LINE = 10;
const LINE_MM = 11.8;
const BOX_MM = 9;
const HEAD_MM = 9.6;
const SHARES_MM = 52;
/** After every fifth box, as the rules of the chart. */
const FIFTH_MM = 2.4;
const BETWEEN_MM = 1.6;

export function ticksPages(context: PatternContext): Draft[] {
  const { copy, figures, materials, chart } = context;
  const words = ticksWords[copy.language];
  const flow = newFlow(context, words.title);
  const reached = reachedAfterRows(context);
  const hasBareRows = reached.some(({ isBare }) => isBare);
  const soft = { color: inks.soft, sizeMm: sizes.note };
  paragraph(flow, [words.introduction, ...(hasBareRows ? [words.bareRows] : [])].join(' '), soft);
  paragraph(flow, words.before(figures.time(mountingSeconds(context))), { ...soft, after: 3 });
  const sheet: Sheet = { context, flow, reached, id: flow.newId() };
  heads(sheet, 'column-head');
  for (let first = 0; first < chart.rows; first += IN_LINE) {
    const before = flow.y;
    flow.need(LINE_MM);
    if (flow.y < before) heads(sheet, 'again');
    line(sheet, first);
  }
  const { seconds, looseEnds } = materials.totals;
  flow.y += 2;
  paragraph(flow, words.after(figures.time(seconds - reached.at(-1)!.seconds), looseEnds > 0), soft);
  return flow.drafts();
}

/** What is reached when a row is done. */
interface Reached {
  readonly isBare: boolean;
  readonly knots: number;
  readonly seconds: number;
}

function reachedAfterRows(context: PatternContext): Reached[] {
  const { chart, plan, design } = context;
  const { secondsPerKnot, secondsPerPiece, secondsPerRow } = design.rates;
  let knots = 0;
  let seconds = mountingSeconds(context);
  return rowTallies(tyingOrder(chart, plan)).map((row) => {
    const isBare = row.knots === 0;
    knots += row.knots;
    seconds += row.knots * secondsPerKnot + (row.attached + row.joined) * secondsPerPiece;
    if (!isBare) seconds += secondsPerRow;
    return { isBare, knots, seconds };
  });
}

function mountingSeconds({ design, materials }: PatternContext): number {
  return materials.cords.cutCords * design.rates.secondsPerMount;
}

interface Sheet {
  readonly context: PatternContext;
  readonly flow: Flow;
  readonly reached: readonly Reached[];
  /** Of the table that all lines are. */
  readonly id: string;
}

function heads({ context, flow, id }: Sheet, kind: 'column-head' | 'again'): void {
  const { chart, copy } = context;
  const words = ticksWords[copy.language];
  const baseline = flow.y + HEAD_MM - 2.2;
  const look = { sizeMm: sizes.small, color: inks.soft, ...(kind === 'again' && { role: kind }) } as const;
  const columns = columnsOf(flow);
  const texts = [
    label(flow.area.x, flow.y + sizes.small, words.rows, look),
    label(columns.knots, baseline, words.knots, { ...look, align: 'right' }),
    label(columns.share, baseline, words.share, { ...look, align: 'right' }),
    label(columns.time, baseline, words.time, { ...look, align: 'right' }),
  ];
  flow.put(arrows(chart, columns, baseline));
  if (kind === 'again') flow.put(...texts);
  else
    flow.put(
      tableRow(
        id,
        texts.map((text) => cell(kind, [text])),
      ),
    );
  flow.y += HEAD_MM;
}

/** Ten rows are an even number, so that all rows below one another go the same way. */
function arrows({ startCorner, rows }: Chart, columns: Columns, baseline: number): Item {
  const reach = 1.9;
  const steps: PathStep[] = Array.from({ length: Math.min(IN_LINE, rows) }, (_, i) => {
    const middle = columns.boxes[i]! + columns.boxMm / 2;
    const way = goesRight(startCorner, i) ? reach : -reach;
    return arrow(middle - way, middle + way, baseline - sizes.small * 0.33, sizes.small);
  }).flat();
  return { kind: 'path', steps, stroke: inks.soft, strokeMm: 0.25, cap: 'round' };
}

function line({ context, flow, reached, id }: Sheet, first: number): void {
  const { figures, accent } = context;
  const columns = columnsOf(flow);
  const rows = reached.slice(first, first + IN_LINE);
  const { knots, seconds } = rows.at(-1)!;
  const all = reached.at(-1)!.knots;
  const share = all === 0 ? 1 : knots / all;
  const baseline = flow.y + BOX_MM * 0.62;
  const figure = (x: number, text: string, face: TextItem['face'] = 'sans') =>
    label(x, baseline, text, { align: 'right', face });
  const boxes = rows.flatMap(({ isBare }, i) =>
    tickBox({ x: columns.boxes[i]!, y: flow.y, width: columns.boxMm, row: first + i + 1, isBare }),
  );
  flow.put(
    tableRow(id, [
      cell('row-head', boxes),
      cell('cell', [figure(columns.knots, figures.count(knots))]),
      // Rounded down: 100 % stands only where all is tied.
      cell('cell', [figure(columns.share, `${Math.floor(share * 100)} %`, 'sans-bold')]),
      cell('cell', [figure(columns.time, figures.time(seconds))]),
    ]),
    ...shareBar(flow.area.x + flow.area.width, flow.y + BOX_MM, share, accent),
  );
  flow.y += LINE_MM;
}

interface TickBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** From 1. */
  readonly row: number;
  readonly isBare: boolean;
}

function tickBox({ x, y, width, row, isBare }: TickBox): Item[] {
  const number = label(x + 1, y + 2.9, String(row), {
    sizeMm: sizes.small,
    color: inks.soft,
    ...(row % IN_LINE === 0 && { face: 'sans-bold' }),
  });
  if (isBare) return [number];
  const box = { kind: 'box', x, y, width, height: BOX_MM, radius: 0.8 } as const;
  return [{ ...box, stroke: inks.soft, strokeMm: 0.25 }, number];
}

/** A line below the figures, in the accent as far as the work has come. */
function shareBar(right: number, y: number, share: number, accent: string): Item[] {
  const left = right - SHARES_MM + 6;
  const rule = { kind: 'rule', x1: left, y1: y - 0.4, y2: y - 0.4, widthMm: 0.8 } as const;
  const reached: Item = { ...rule, x2: left + (right - left) * share, color: accent };
  return [{ ...rule, x2: right, color: inks.hair }, ...(share > 0 ? [reached] : [])];
}

interface Columns {
  /** Left sides of the boxes. */
  readonly boxes: readonly number[];
  readonly boxMm: number;
  /** Right ends of the figures. */
  readonly knots: number;
  readonly share: number;
  readonly time: number;
}

function columnsOf({ area }: Flow): Columns {
  const right = area.x + area.width;
  const boxMm = (area.width - SHARES_MM - FIFTH_MM - (IN_LINE - 1) * BETWEEN_MM) / IN_LINE;
  const boxes = Array.from(
    { length: IN_LINE },
    (_, i) => area.x + i * (boxMm + BETWEEN_MM) + (i < IN_LINE / 2 ? 0 : FIFTH_MM),
  );
  return { boxes, boxMm, knots: right - 33.5, share: right - 22, time: right };
}

function tableRow(id: string, cells: readonly Item[]): GroupItem {
  return { kind: 'group', structure: 'table', id, items: [cell('row', cells)] };
}

function cell(structure: Structure, items: readonly Item[]): GroupItem {
  return { kind: 'group', structure, items };
}
