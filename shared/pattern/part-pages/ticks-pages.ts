/**
 * The tick sheet: a box for each row, ten to a line, so that a place is found again at a glance; and what is reached at the end of
 * each line. The times of all rows, of mounting and of finishing add up to the time that the pattern tells.
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import { rowTallies } from '../../tying/steps/row-tallies.ts';
import { tyingOrder } from '../../tying/steps/tying-order.ts';
import { arrow } from '../chart-pages/chart-block.ts';
import type { Copy } from '../copy.ts';
import { textWidthMm } from '../faces/measure-text.ts';
import { type Flow, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { label } from '../page/label.ts';
import type { GroupItem, Item, PathStep, Structure, TextItem } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { inks, sizes } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { ticksWords } from '../words/ticks-words.ts';

const IN_LINE = 10;

/** Ems and heights of the table, in mm; ten rows stand in a line in large print, too, so that its type is as large as they allow. */
interface TickScale {
  readonly numberMm: number;
  readonly figureMm: number;
  readonly headMm: number;
  readonly boxMm: number;
  readonly lineMm: number;
  /** What the heads of columns take. */
  readonly headsMm: number;
  /** Between figures, and before the first one. */
  readonly gapMm: number;
}

const tickScales: Readonly<Record<Copy['cells'], TickScale>> = {
  standard: {
    numberMm: sizes.small,
    figureMm: sizes.body,
    headMm: sizes.small,
    boxMm: 9,
    lineMm: 11.8,
    headsMm: 9.6,
    gapMm: 5,
  },
  large: { numberMm: 4.95, figureMm: 4.95, headMm: 4.95, boxMm: 12, lineMm: 15, headsMm: 14.5, gapMm: 4.6 },
};

/** After every fifth box, as the rules of the chart. */
const FIFTH_MM = 2.4;
const BETWEEN_MM = 1.6;
/** Wider ones look like fields to write in. */
const MOST_BOX_MM = 12;

export function ticksPages(context: PatternContext): Draft[] {
  const { copy, figures, materials, chart } = context;
  const words = ticksWords[copy.language];
  const flow = newFlow(context, words.title);
  const reached = reachedAfterRows(context);
  const hasBareRows = reached.some(({ isBare }) => isBare);
  const soft = { color: inks.soft, sizeMm: flow.sizes.note };
  paragraph(flow, [words.introduction, ...(hasBareRows ? [words.bareRows] : [])].join(' '), soft);
  paragraph(flow, words.before(figures.time(mountingSeconds(context))), { ...soft, after: 3 });
  const scale = tickScales[copy.cells];
  const columns = columnsOf(context, flow.area, reached, scale);
  const sheet: Sheet = { context, flow, reached, scale, columns, id: flow.newId() };
  heads(sheet, 'column-head');
  for (let first = 0; first < chart.rows; first += IN_LINE) {
    const before = flow.y;
    flow.need(scale.lineMm);
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
  readonly scale: TickScale;
  readonly columns: Columns;
  /** Of the table that all lines are. */
  readonly id: string;
}

function heads({ context, flow, id, scale, columns }: Sheet, kind: 'column-head' | 'again'): void {
  const { chart, copy } = context;
  const words = ticksWords[copy.language];
  const { headMm: sizeMm, headsMm } = scale;
  const baseline = flow.y + headsMm - 2.2;
  const look = { sizeMm, color: inks.soft, ...(kind === 'again' && { role: kind }) } as const;
  const texts = [
    label(flow.area.x, flow.y + sizeMm, words.rows, look),
    label(columns.knots, baseline, words.knots, { ...look, align: 'right' }),
    label(columns.share, baseline, words.share, { ...look, align: 'right' }),
    label(columns.time, baseline, words.time, { ...look, align: 'right' }),
  ];
  flow.put(arrows(chart, columns, baseline, sizeMm));
  if (kind === 'again') flow.put(...texts);
  else
    flow.put(
      tableRow(
        id,
        texts.map((text) => cell(kind, [text])),
      ),
    );
  flow.y += headsMm;
}

/** Ten rows are an even number, so that all rows below one another go the same way. */
function arrows({ startCorner, rows }: Chart, columns: Columns, baseline: number, sizeMm: number): Item {
  const reach = sizeMm * 0.7;
  const steps: PathStep[] = Array.from({ length: Math.min(IN_LINE, rows) }, (_, i) => {
    const middle = columns.boxes[i]! + columns.boxMm / 2;
    const way = goesRight(startCorner, i) ? reach : -reach;
    return arrow(middle - way, middle + way, baseline - sizeMm * 0.33, sizeMm);
  }).flat();
  return { kind: 'path', steps, stroke: inks.soft, strokeMm: 0.25, cap: 'round' };
}

function line({ context, flow, reached, scale, columns, id }: Sheet, first: number): void {
  const { figures, accent } = context;
  const rows = reached.slice(first, first + IN_LINE);
  const { knots, seconds } = rows.at(-1)!;
  const all = reached.at(-1)!.knots;
  const share = all === 0 ? 1 : knots / all;
  const { boxMm: height, numberMm, figureMm: sizeMm } = scale;
  const baseline = flow.y + height * 0.62;
  const figure = (x: number, text: string, face: TextItem['face'] = 'sans') =>
    label(x, baseline, text, { align: 'right', face, sizeMm });
  const boxes = rows.flatMap(({ isBare }, i) =>
    tickBox({
      ...{ x: columns.boxes[i]!, y: flow.y, width: columns.boxMm, height },
      ...{ numberMm, row: first + i + 1, isBare },
    }),
  );
  flow.put(
    tableRow(id, [
      cell('row-head', boxes),
      cell('cell', [figure(columns.knots, figures.count(knots))]),
      // Rounded down: 100 % stands only where all is tied.
      cell('cell', [figure(columns.share, `${Math.floor(share * 100)} %`, 'sans-bold')]),
      cell('cell', [figure(columns.time, figures.time(seconds))]),
    ]),
    ...shareBar(columns.figuresX, columns.time, flow.y + height, share, accent),
  );
  flow.y += scale.lineMm;
}

interface TickBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly numberMm: number;
  /** From 1. */
  readonly row: number;
  readonly isBare: boolean;
}

function tickBox({ x, y, width, height, numberMm, row, isBare }: TickBox): Item[] {
  const number = label(x + numberMm * 0.25, y + numberMm * 1.07, String(row), {
    sizeMm: numberMm,
    color: inks.soft,
    ...(row % IN_LINE === 0 && { face: 'sans-bold' }),
  });
  if (isBare) return [number];
  const box = { kind: 'box', x, y, width, height, radius: 0.8 } as const;
  return [{ ...box, stroke: inks.soft, strokeMm: 0.25 }, number];
}

/** A line below the figures, in the accent as far as the work has come. */
function shareBar(left: number, right: number, y: number, share: number, accent: string): Item[] {
  const rule = { kind: 'rule', x1: left, y1: y - 0.4, y2: y - 0.4, widthMm: 0.8 } as const;
  const reached: Item = { ...rule, x2: left + (right - left) * share, color: accent };
  return [{ ...rule, x2: right, color: inks.hair }, ...(share > 0 ? [reached] : [])];
}

interface Columns {
  /** Left sides of the boxes. */
  readonly boxes: readonly number[];
  readonly boxMm: number;
  /** Where the figures begin. */
  readonly figuresX: number;
  /** Right ends of the figures. */
  readonly knots: number;
  readonly share: number;
  readonly time: number;
}

/** The figures take what the widest of them take, and the boxes what is left. */
function columnsOf(
  { copy, figures }: PatternContext,
  { x, width }: Area,
  reached: readonly Reached[],
  { figureMm, headMm, gapMm }: TickScale,
): Columns {
  const words = ticksWords[copy.language];
  const widest = (head: string, texts: readonly string[], face: TextItem['face'] = 'sans') =>
    texts.reduce(
      (most, text) => Math.max(most, textWidthMm(text, face, figureMm)),
      textWidthMm(head, 'sans', headMm),
    );
  const ends = reached.filter((_, row) => row % IN_LINE === IN_LINE - 1 || row === reached.length - 1);
  const knotsMm = widest(
    words.knots,
    ends.map(({ knots }) => figures.count(knots)),
  );
  const shareMm = widest(words.share, ['100 %'], 'sans-bold');
  const timeMm = widest(
    words.time,
    ends.map(({ seconds }) => figures.time(seconds)),
  );
  const time = x + width;
  const share = time - timeMm - gapMm;
  const knots = share - shareMm - gapMm;
  const figuresX = knots - knotsMm;
  const between = FIFTH_MM + (IN_LINE - 1) * BETWEEN_MM;
  const boxMm = Math.min(MOST_BOX_MM, (figuresX - gapMm - x - between) / IN_LINE);
  const boxes = Array.from(
    { length: IN_LINE },
    (_, i) => x + i * (boxMm + BETWEEN_MM) + (i < IN_LINE / 2 ? 0 : FIFTH_MM),
  );
  return { boxes, boxMm, figuresX, knots, share, time };
}

function tableRow(id: string, cells: readonly Item[]): GroupItem {
  return { kind: 'group', structure: 'table', id, items: [cell('row', cells)] };
}

function cell(structure: Structure, items: readonly Item[]): GroupItem {
  return { kind: 'group', structure, items };
}
