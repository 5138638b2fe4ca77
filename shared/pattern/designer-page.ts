/** The last page: who designed the pattern, where to turn to, thanks, and what was found to be wrong in it since. */
import { heading, newFlow, paragraph } from './flow.ts';
import { label } from './label.ts';
import { markIn } from './mark.ts';
import type { Draft } from './page-foot.ts';
import type { PatternContext } from './pattern-input.ts';
import { inks, sizes } from './style.ts';
import { linesOf, paragraphs } from './texts.ts';
import { designerWords } from './words/designer-words.ts';
import { editionWords } from './words/edition-words.ts';

/** What the mark takes at most, above the name. */
const MARK_MM = { width: 60, height: 30 } as const;
/** Of the body's width: a line that is read well. */
const TEXT_SHARE = 0.66;

/** No page where nobody is named and nothing is told. */
export function designerPages(context: PatternContext): Draft[] {
  const { design, imprint, printer, copy, edition } = context;
  const words = designerWords[copy.language];
  const name = printer.printable(design.designer || imprint.name, 'serif-bold');
  const workshop = printer.printable(imprint.workshop);
  const about = linesOf(imprint.about, printer);
  const contact = imprint.contact.map((line) => printer.printable(line)).filter((line) => line !== '');
  const errata = edition?.errata ?? [];
  if (!name && !workshop && about.length + contact.length + errata.length === 0) return [];

  const flow = newFlow(context, words.title);
  const width = flow.area.width * TEXT_SHARE;
  const mark = markIn(context, { x: flow.area.x, y: flow.y, ...MARK_MM }, 'top left');
  if (mark) {
    flow.put(mark);
    flow.y += mark.height + 4;
  }
  if (name) paragraph(flow, name, { face: 'serif-bold', sizeMm: sizes.heading, after: 0.6 });
  if (workshop) paragraph(flow, workshop, { sizeMm: sizes.lead, color: inks.soft, after: 3 });
  paragraphs(flow, about, { width });
  if (contact.length > 0) {
    heading(flow, words.contact);
    paragraphs(flow, contact, { width, after: 0.4 });
  }
  heading(flow, words.thanks);
  paragraph(flow, words.thanksText(printer.printable(design.title)), { width });
  const editionName = edition ? editionWords[copy.language].name(edition.number, edition.date) : '';
  heading(flow, words.mistakes);
  paragraph(flow, words.mistakesText(editionName, contact.length > 0), { width });
  if (errata.length > 0) {
    heading(flow, words.errata(editionName));
    for (const { date, text } of errata) {
      flow.need(10);
      flow.put(
        label(flow.area.x, flow.y + sizes.note * 1.3, date, {
          sizeMm: sizes.note,
          color: inks.soft,
          role: 'paragraph',
        }),
      );
      flow.y += sizes.note * 1.45;
      paragraphs(flow, linesOf(text, printer), { width });
    }
  }
  return flow.drafts();
}
