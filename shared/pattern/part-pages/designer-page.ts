/**
 * The last page: who designed the pattern, thanks, what was found to be wrong in it since, and beside them the picture and where to
 * turn to; in large print one below the other.
 */
import { codeOf } from '../../design/codes.ts';
import { printedAspect } from '../chart-pages/printed-aspect.ts';
import { wrapText } from '../faces/measure-text.ts';
import { type Flow, heading, newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { linesOf, paragraphs } from '../flow/texts.ts';
import { label } from '../page/label.ts';
import { markIn } from '../page/mark.ts';
import type { CellsItem, Item } from '../page/page.ts';
import { inks, LEADING, ruleMm } from '../page/style.ts';
import type { PatternContext } from '../pattern-input.ts';
import { designerWords } from '../words/designer-words.ts';
import { editionWords } from '../words/edition-words.ts';

/** What the mark takes at most, above the name. */
const MARK_MM = { width: 60, height: 30 } as const;
/** Of the body's width; between them is the gap. */
const TEXT_SHARE = 0.56;
const SIDE_SHARE = 0.37;
const PICTURE_MM = 90;

/** No page where nothing more is told than one name, which stands on the cover. */
export function designerPages(context: PatternContext): Draft[] {
  const { design, imprint, printer, copy, edition } = context;
  const words = designerWords[copy.language];
  const name = printer.printable(design.designer || imprint.name, 'serif-bold');
  const publisher =
    design.designer && imprint.name && imprint.name !== design.designer
      ? words.publishedBy(printer.printable(imprint.name))
      : '';
  const workshop = printer.printable(imprint.workshop);
  const about = linesOf(imprint.about, printer);
  const contact = imprint.contact.map((line) => printer.printable(line)).filter((line) => line !== '');
  const errata = edition?.errata ?? [];
  const isTold = publisher || workshop || imprint.mark;
  if (!isTold && about.length + contact.length + errata.length === 0) return [];

  const flow = newFlow(context, words.title);
  const { sizes, area } = flow;
  const isLarge = copy.cells === 'large';
  const width = area.width * (isLarge ? 1 : TEXT_SHARE);
  if (!isLarge) flow.put(...side(flow, context, contact));
  const mark = markIn(context, { x: area.x, y: flow.y, ...MARK_MM }, 'top left');
  if (mark) {
    flow.put(mark);
    flow.y += mark.height + 4;
  }
  if (name) paragraph(flow, name, { face: 'serif-bold', sizeMm: sizes.heading, width, after: 0.6 });
  if (publisher) paragraph(flow, publisher, { sizeMm: sizes.lead, color: inks.soft, width, after: 0.6 });
  if (workshop) paragraph(flow, workshop, { sizeMm: sizes.lead, color: inks.soft, width, after: 3 });
  paragraphs(flow, about, { width });
  if (isLarge && contact.length > 0) {
    heading(flow, words.contact);
    paragraphs(flow, contact, { after: 0.4 });
  }
  heading(flow, words.thanks, width);
  paragraph(flow, words.thanksText(printer.printable(design.title)), { width });
  const editionName = edition ? editionWords[copy.language].name(edition.number, edition.date) : '';
  heading(flow, words.mistakes, width);
  paragraph(flow, words.mistakesText(editionName, contact.length > 0), { width });
  if (errata.length > 0) {
    heading(flow, words.errata(editionName), width);
    for (const { date, text } of errata) {
      flow.need(3 * sizes.body * LEADING);
      paragraph(flow, date, { sizeMm: sizes.note, color: inks.soft, width, after: 0 });
      paragraphs(flow, linesOf(text, printer), { width });
    }
  }
  return flow.drafts();
}

/** The picture as it is knotted, and below it where to turn to, at the right of the first page. */
function side(flow: Flow, context: PatternContext, contact: readonly string[]): Item[] {
  const { area, sizes, accent } = flow;
  const words = designerWords[context.copy.language];
  const width = area.width * SIDE_SHARE;
  const x = area.x + area.width - width;
  const picture = knottedPicture(context, { x, y: flow.y + 1, width });
  if (contact.length === 0) return [picture];
  const titleY = picture.y + picture.rows * picture.cellHeight + 6 + sizes.lead;
  const rule: Item = {
    kind: 'rule',
    x1: x,
    y1: titleY + 2,
    x2: x + width,
    y2: titleY + 2,
    widthMm: 0.4,
    color: accent,
  };
  const line = sizes.body * LEADING;
  const wrapped = contact.flatMap((text) => wrapText(text, 'sans', sizes.body, width));
  const last = titleY + 3 + wrapped.length * line;
  return [
    picture,
    label(x, titleY, words.contact, { face: 'serif-bold', sizeMm: sizes.lead, role: 'heading' }),
    rule,
    ...wrapped.map((text, i) => label(x, titleY + 3 + (i + 1) * line, text, { role: 'paragraph' })),
    { ...rule, y1: last + 2.4, y2: last + 2.4, widthMm: ruleMm.thin, color: inks.hair },
  ];
}

/** As wide as there is room, or as high as it may be. */
function knottedPicture(
  { design, chart, materials, copy, printer }: PatternContext,
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
): CellsItem {
  const aspect = printedAspect(materials.gauge);
  const cellWidth = Math.min(width / chart.columns, (PICTURE_MM / chart.rows) * aspect);
  return {
    kind: 'cells',
    x,
    y,
    cellWidth,
    cellHeight: cellWidth / aspect,
    columns: chart.columns,
    rows: chart.rows,
    codes: chart.cells,
    inks: Object.fromEntries(
      design.yarns.map(({ id, color }) => [codeOf(id), { fill: color, ink: inks.text }]),
    ),
    alt: designerWords[copy.language].picture(printer.printable(design.title)),
  };
}
