/**
 * A design and its figures as the pages of a pattern: the parts that the design asks for, one behind the other. A pure
 * function; drawing the pages is another's work.
 */

import type { PatternPart } from '../design/pattern-schema.ts';
import type { Materials } from '../materials/materials.ts';
import { printedAspect } from './chart-pages/printed-aspect.ts';
import { chosenParts } from './chosen-parts.ts';
import { type Draft, finishPage } from './flow/page-foot.ts';
import { inGreys } from './page/in-greys.ts';
import type { PatternDocument } from './page/page.ts';
import { typeScales } from './page/style.ts';
import { parts } from './parts.ts';
import { patternContext } from './pattern-context.ts';
import type { PageNumbers, PatternContext, PatternInput } from './pattern-input.ts';
import { coverWords } from './words/cover-words.ts';
import { editionWords } from './words/edition-words.ts';
import { footWords } from './words/foot-words.ts';
import { listingWords } from './words/listing-words.ts';

export function layOutPattern(input: PatternInput): PatternDocument {
  const { design, materials } = input;
  const context = patternContext(input);
  const { printer, copy } = context;
  const laidOut = layOutParts(context, chosenParts(design));
  const drafts = laidOut.flatMap(({ drafts }) => drafts);
  const title = printer.printable(design.title);
  const foot = {
    title,
    language: copy.language,
    stamp: stampOf(context),
    sizeMm: typeScales[copy.cells].foot,
  };
  return {
    title,
    author: printer.printable(design.designer || context.imprint.name),
    subject: subjectOf(context),
    keywords: listingWords[copy.language].tags,
    language: context.copy.language,
    pages: laidOut
      .flatMap(({ part, drafts }) => drafts.map((draft) => ({ part, draft })))
      .map(({ part, draft }, i) => ({ ...finishPage(draft, foot, i + 1, drafts.length), part }))
      .map((page) => (context.copy.ink === 'grey' ? { ...page, items: inGreys(page.items) } : page)),
    notices: [...printer.notices, ...aspectNotice(materials.gauge)],
  };
}

/** 'Pattern for a knotted wall hanging: 40 cords, 48 rows. Edition 2, 2031-05-08'. */
function subjectOf({ copy, materials, edition }: PatternContext): string {
  const words = coverWords[copy.language];
  const about = `${words.kind}: ${words.extent(materials.columns, materials.rows)}`;
  return edition ? `${about}. ${editionWords[copy.language].name(edition.number, edition.date)}` : about;
}

/** Which edition it is, and for whom it is prepared. */
function stampOf({ copy, edition, printer }: PatternContext): string {
  const { language, preparedFor } = copy;
  return [
    ...(edition ? [editionWords[language].name(edition.number, edition.date)] : []),
    ...(preparedFor ? [footWords[language].preparedFor(printer.printable(preparedFor))] : []),
  ].join(' · ');
}

interface LaidOut {
  readonly part: PatternPart;
  readonly drafts: readonly Draft[];
}

/** More rounds than this would mean that a part goes back and forth between two numbers of pages. */
const ROUNDS_AT_MOST = 4;

/**
 * Counted first; then those that want to know where others begin are laid out once more, where that is known. Should one of them
 * take more or fewer pages by what it was told, the others begin elsewhere, and all that ask are told anew.
 */
function layOutParts(context: PatternContext, chosen: readonly PatternPart[]): LaidOut[] {
  let counted = chosen.map((part) => countPart(context, part));
  for (let round = 1; ; round++) {
    const at = numbersOf(counted);
    const told = counted.map((each): Counted => {
      if (each.drafts || parts[each.part]?.count) return each;
      const drafts = parts[each.part]?.pages(context, at) ?? [];
      return { ...each, count: drafts.length, drafts };
    });
    if (told.every(({ count }, i) => count === counted[i]!.count) || round === ROUNDS_AT_MOST)
      return told.map(({ part, drafts }) => ({
        part,
        drafts: drafts ?? parts[part]?.pages(context, at) ?? [],
      }));
    counted = told.map((each, i) => ({ ...each, drafts: counted[i]!.drafts }));
  }
}

interface Counted {
  readonly part: PatternPart;
  readonly count: number;
  /** Null where they hang on where other parts begin. */
  readonly drafts: readonly Draft[] | null;
}

function countPart(context: PatternContext, part: PatternPart): Counted {
  const { count, pages } = parts[part] ?? { pages: () => [] };
  if (count) return { part, count: count(context), drafts: null };
  let hasAsked = false;
  const ask = () => {
    hasAsked = true;
    return 1;
  };
  const drafts = pages(context, { first: ask, count: ask });
  return { part, count: drafts.length, drafts: hasAsked ? null : drafts };
}

function numbersOf(counted: readonly Counted[]): PageNumbers {
  const firsts = new Map<PatternPart, number>();
  const counts = new Map<PatternPart, number>();
  let next = 1;
  for (const { part, count } of counted) {
    if (count > 0) firsts.set(part, next);
    counts.set(part, count);
    next += count;
  }
  return { first: (part) => firsts.get(part) ?? null, count: (part) => counts.get(part) ?? 0 };
}

function aspectNotice(gauge: Materials['gauge']): string[] {
  return printedAspect(gauge) === gauge.pitchMm / gauge.rowHeightMm
    ? []
    : [
        'The knots of this gauge are so narrow or so low that the chart cannot show their proportions: check the swatch.',
      ];
}
