/**
 * The papers that go with a finished hanging, those that are wished, one behind the other: a document of its own, beside the pattern.
 * It is made from what the pattern is made from, so that its figures are the pattern's; copy and imprint say language and maker.
 *
 * The bridge's verb `papers.save` writes it: `{ text, paper, units, copy?, which: HangingPaper[], target }`, answered as
 * `labels.save` is; `which` names at least one. Problem `nothing-to-print` where none of them has a page.
 */

import { type Draft, finishPage } from '../flow/page-foot.ts';
import type { PatternDocument } from '../page/page.ts';
import { sizes } from '../page/style.ts';
import { patternContext } from '../pattern-context.ts';
import type { PatternContext, PatternInput } from '../pattern-input.ts';
import { hangingWords } from '../words/hanging-words.ts';
import { BACKING_SHEETS_AT_MOST, backingSheets, backingTemplate, backingTiles } from './backing-template.ts';
import { careCard, careCardNotices } from './care-card.ts';
import { type HangingPaper, hangingPapers } from './hanging-papers.ts';
import { packingNote } from './packing-note.ts';
import { fibreLabel, priceTag } from './small-cards.ts';

/** Cards have the room that they have, whatever the copy's type is. */
function inStandardType(context: PatternContext): PatternContext {
  return { ...context, copy: { ...context.copy, cells: 'standard' } };
}

const pagesOf: Readonly<Record<HangingPaper, (context: PatternContext) => Draft[]>> = {
  'care-card': careCard,
  'fibre-label': fibreLabel,
  'price-tag': priceTag,
  backing: backingTemplate,
  'backing-tiles': backingTiles,
  'packing-note': packingNote,
};

/** In their usual order, each once. */
export function layOutHangingPapers(input: PatternInput, which: readonly HangingPaper[]): PatternDocument {
  const context = inStandardType(patternContext(input));
  const { copy, printer, design } = context;
  const { language } = copy;
  const drafts = hangingPapers
    .filter((each) => which.includes(each))
    .flatMap((each) => pagesOf[each](context));
  const title = printer.printable(design.title);
  const sheets = which.includes('backing-tiles') ? backingSheets(context).length : 0;
  return {
    title,
    author: printer.printable(design.designer),
    language,
    pages: drafts.map((draft, i) =>
      finishPage(draft, { title, language, stamp: '', sizeMm: sizes.foot }, i + 1, drafts.length),
    ),
    notices: [
      ...printer.notices,
      ...(which.includes('care-card') ? careCardNotices(context) : []),
      ...(sheets > BACKING_SHEETS_AT_MOST ? [hangingWords[language].backing.tooMany(sheets)] : []),
    ],
  };
}
