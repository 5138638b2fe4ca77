/**
 * Labels for the bundles of cut pieces: a grid to cut apart, one label for each yarn and length, with the numbers of
 * its pieces, the rows where they come in, and the hanging that they are for. A bundle whose numbers don't fit on one
 * label takes several, and each says so.
 */

import { codeOf } from '../../design/codes.ts';
import type { Bundle, Bundles } from '../../materials/bundles/bundles.ts';
import { drawSwatch } from '../chart-pages/key.ts';
import { fitText, wrapText } from '../faces/measure-text.ts';
import { type FlowContext, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { label } from '../page/label.ts';
import type { Item } from '../page/page.ts';
import type { Area } from '../page/papers.ts';
import { inks, LEADING, ruleMm, sizes } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { labelsWords } from '../words/labels-words.ts';

export type LabelsContext = Pick<PatternContext, 'design' | 'figures' | 'cellInks' | 'printer'> & FlowContext;

/** No page where nothing is cut. */
export function labelsPages(context: LabelsContext, { bundles }: Bundles): Draft[] {
  const words = labelsWords[context.copy.language];
  const flow = newFlow(context, words.title);
  paragraph(flow, words.introduction, { color: inks.soft, sizeMm: sizes.note, after: 3 });
  const width = flow.area.width / COLUMNS;
  const room = width - 2 * PADDING_MM;
  const labels = bundles.flatMap((bundle) => splitOverLabels(bundle, context, room));
  // All are of one height, so that the sheet is cut along whole lines.
  const height = Math.max(...labels.map((each) => heightOf(each, context, room)));
  labels.forEach((each, i) => {
    const column = i % COLUMNS;
    if (column === 0) {
      if (i > 0) flow.y += height;
      flow.need(height);
    }
    const box = { x: flow.area.x + column * width, y: flow.y, width, height };
    flow.put(...drawLabel(each, context, box));
  });
  return labels.length === 0 ? [] : flow.drafts();
}

const COLUMNS = 3;
const PADDING_MM = 3.2;
const SWATCH_MM = 5.4;
const NAME_MM = sizes.body * 1.15;
const SMALL_MM = sizes.note;
const NAME_X_MM = SWATCH_MM + 2;
/** Baselines below the padding: of the name's first line, of the length below it, and of the lines below that. */
const NAME_Y_MM = SWATCH_MM * 0.7;
const LENGTH_Y_MM = 6.6;
const LINES_Y_MM = 4.4;
const NAME_LINES = 2;
const NUMBER_LINES = 3;

/** What stands on one label. */
interface BundleLabel extends Pick<Bundle, 'yarn' | 'cutMm'> {
  readonly count: number;
  /** Numbers of the pieces, neighbours together. */
  readonly ranges: readonly Range[];
  /** Where the first and the last of them come in. */
  readonly rows: Range;
  /** Which label of its bundle it is, from 1, and how many there are. */
  readonly part: number;
  readonly of: number;
}

interface Range {
  readonly from: number;
  readonly to: number;
}

/** As many pieces on each label as its lines of numbers hold, in the order of use. */
function splitOverLabels(
  { yarn, cutMm, pieces }: Bundle,
  context: LabelsContext,
  width: number,
): BundleLabel[] {
  const labels: Omit<BundleLabel, 'part' | 'of'>[] = [];
  for (const { number, row } of pieces) {
    const begun = labels.at(-1);
    const longer = begun && {
      ...begun,
      count: begun.count + 1,
      ranges: withNumber(begun.ranges, number),
      rows: { from: begun.rows.from, to: row },
    };
    if (longer && numberLines(longer, context, width).length <= NUMBER_LINES)
      labels[labels.length - 1] = longer;
    else {
      const alone = { from: number, to: number };
      labels.push({ yarn, cutMm, count: 1, ranges: [alone], rows: { from: row, to: row } });
    }
  }
  return labels.map((each, i) => ({ ...each, part: i + 1, of: labels.length }));
}

function withNumber(ranges: readonly Range[], number: number): Range[] {
  const last = ranges.at(-1);
  if (last?.to === number - 1) return [...ranges.slice(0, -1), { from: last.from, to: number }];
  return [...ranges, { from: number, to: number }];
}

function numberLines(
  { count, ranges }: Pick<BundleLabel, 'count' | 'ranges'>,
  { figures, copy }: LabelsContext,
  width: number,
): string[] {
  const words = labelsWords[copy.language];
  const numbers = ranges.map(rangeText).join(', ');
  const text = count === 1 ? words.piece(numbers) : words.pieces(figures.count(count), numbers);
  return wrapText(text, 'sans', SMALL_MM, width);
}

/** Rows, numbers, and which of several labels it is. */
function linesOf(bundle: BundleLabel, context: LabelsContext, room: number): string[] {
  const words = labelsWords[context.copy.language];
  const { rows, part, of } = bundle;
  return [
    words.rows(rangeText(rows), rows.from !== rows.to),
    ...numberLines(bundle, context, room),
    ...(of > 1 ? [words.part(part, of)] : []),
  ];
}

/** A long name takes a second line, and no more. */
function nameLines({ yarn }: BundleLabel, { design, printer }: LabelsContext, room: number): string[] {
  const name = printer.printable(design.yarns.find(({ id }) => id === yarn)!.name);
  const wrapped = wrapText(name, 'sans-bold', NAME_MM, room - NAME_X_MM);
  if (wrapped.length <= NAME_LINES) return wrapped;
  const [first = ''] = wrapped;
  const rest = name.normalize('NFC').slice(first.length).trimStart();
  return [first, fitText(rest, 'sans-bold', NAME_MM, room - NAME_X_MM)];
}

function heightOf(bundle: BundleLabel, context: LabelsContext, room: number): number {
  const names = nameLines(bundle, context, room).length;
  // One more for the hanging's name.
  const lines = linesOf(bundle, context, room).length + 1;
  return 2 * PADDING_MM + baselineOfLine(names, lines - 1);
}

/** Below the padding; lines count from 0, `names` are those of the yarn's name. */
function baselineOfLine(names: number, line: number): number {
  return lengthBaseline(names) + LINES_Y_MM + line * SMALL_MM * LEADING;
}

function lengthBaseline(names: number): number {
  return NAME_Y_MM + (names - 1) * NAME_MM * LEADING + LENGTH_Y_MM;
}

function drawLabel(bundle: BundleLabel, context: LabelsContext, box: Area): Item[] {
  const { design, figures, cellInks, printer } = context;
  const left = box.x + PADDING_MM;
  const top = box.y + PADDING_MM;
  const room = box.width - 2 * PADDING_MM;
  const names = nameLines(bundle, context, room);
  const hanging = fitText(printer.printable(design.title), 'sans', SMALL_MM, room);
  return [
    { kind: 'box', ...box, stroke: inks.hair, strokeMm: ruleMm.thin },
    ...drawSwatch(codeOf(bundle.yarn), left, top, SWATCH_MM, cellInks),
    ...names.map((name, i) =>
      label(left + NAME_X_MM, top + NAME_Y_MM + i * NAME_MM * LEADING, name, {
        face: 'sans-bold',
        sizeMm: NAME_MM,
        role: 'paragraph',
      }),
    ),
    label(left, top + lengthBaseline(names.length), figures.cutLength(bundle.cutMm), { sizeMm: NAME_MM }),
    ...linesOf(bundle, context, room).map((line, i) =>
      label(left, top + baselineOfLine(names.length, i), line, { sizeMm: SMALL_MM }),
    ),
    label(left, box.y + box.height - PADDING_MM, hanging, { sizeMm: SMALL_MM, color: inks.soft }),
  ];
}

function rangeText({ from, to }: Range): string {
  return from === to ? String(from) : `${from}–${to}`;
}
