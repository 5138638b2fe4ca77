/**
 * Labels for the bundles of cut pieces: a grid to cut apart, one label for each yarn and length, with the numbers of
 * its pieces and the rows where they come in. A bundle whose numbers don't fit on one label takes several.
 */

import { codeOf } from '../design/codes.ts';
import type { Bundle, Bundles } from '../materials/bundles/bundles.ts';
import { fitText, wrapText } from './faces/measure-text.ts';
import { type FlowContext, newFlow, paragraph } from './flow.ts';
import { drawSwatch } from './key.ts';
import { label } from './label.ts';
import type { Item } from './page.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, LEADING, ruleMm, sizes } from './style.ts';
import { labelsWords } from './words/labels-words.ts';

export type LabelsContext = Pick<PatternContext, 'design' | 'figures' | 'cellInks' | 'printer'> & FlowContext;

/** No page where nothing is cut. */
export function labelsPages(context: LabelsContext, { bundles }: Bundles): Draft[] {
  const words = labelsWords[context.copy.language];
  const flow = newFlow(context, words.title);
  paragraph(flow, words.introduction, { color: inks.soft, sizeMm: sizes.note, after: 3 });
  const width = flow.area.width / COLUMNS;
  const labels = bundles.flatMap((bundle) => splitOverLabels(bundle, context, width - 2 * PADDING_MM));
  labels.forEach((each, i) => {
    const column = i % COLUMNS;
    if (column === 0) {
      if (i > 0) flow.y += HEIGHT_MM;
      flow.need(HEIGHT_MM);
    }
    flow.put(...drawLabel(each, context, flow.area.x + column * width, flow.y, width));
  });
  return labels.length === 0 ? [] : flow.drafts();
}

const COLUMNS = 3;
const HEIGHT_MM = 32;
const PADDING_MM = 3.2;
const SWATCH_MM = 5.4;
const NAME_MM = sizes.body * 1.15;
const SMALL_MM = sizes.note;
const NUMBER_LINES = 3;

/** What stands on one label. */
interface BundleLabel extends Pick<Bundle, 'yarn' | 'cutMm'> {
  readonly count: number;
  /** Numbers of the pieces, neighbours together. */
  readonly ranges: readonly Range[];
  /** Where the first and the last of them come in. */
  readonly rows: Range;
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
  const labels: BundleLabel[] = [];
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
  return labels;
}

function withNumber(ranges: readonly Range[], number: number): Range[] {
  const last = ranges.at(-1);
  if (last?.to === number - 1) return [...ranges.slice(0, -1), { from: last.from, to: number }];
  return [...ranges, { from: number, to: number }];
}

function numberLines(
  { count, ranges }: BundleLabel,
  { figures, copy }: LabelsContext,
  width: number,
): string[] {
  const words = labelsWords[copy.language];
  const numbers = ranges.map(rangeText).join(', ');
  const text = count === 1 ? words.piece(numbers) : words.pieces(figures.count(count), numbers);
  return wrapText(text, 'sans', SMALL_MM, width);
}

function drawLabel(bundle: BundleLabel, context: LabelsContext, x: number, y: number, width: number): Item[] {
  const { design, figures, cellInks, printer, copy } = context;
  const left = x + PADDING_MM;
  const top = y + PADDING_MM;
  const room = width - 2 * PADDING_MM;
  const name = printer.printable(design.yarns.find(({ id }) => id === bundle.yarn)!.name);
  const nameX = SWATCH_MM + 2;
  const { rows } = bundle;
  const lines = [
    labelsWords[copy.language].rows(rangeText(rows), rows.from !== rows.to),
    ...numberLines(bundle, context, room),
  ];
  return [
    { kind: 'box', x, y, width, height: HEIGHT_MM, stroke: inks.hair, strokeMm: ruleMm.thin },
    ...drawSwatch(codeOf(bundle.yarn), left, top, SWATCH_MM, cellInks),
    label(left + nameX, top + SWATCH_MM * 0.7, fitText(name, 'sans-bold', NAME_MM, room - nameX), {
      face: 'sans-bold',
      sizeMm: NAME_MM,
      role: 'paragraph',
    }),
    label(left, top + 10.4, figures.cutLength(bundle.cutMm), { sizeMm: NAME_MM }),
    ...lines.map((line, i) => label(left, top + 14.8 + i * SMALL_MM * LEADING, line, { sizeMm: SMALL_MM })),
  ];
}

function rangeText({ from, to }: Range): string {
  return from === to ? String(from) : `${from}–${to}`;
}
