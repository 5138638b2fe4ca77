/**
 * Preflight: what would disappoint a buyer, looked for before the pattern is sold. The design and its figures are looked at, and the
 * pages as they are laid out. It finds, and changes nothing.
 */
import { counted } from '../../units/counted.ts';
import { copyOf } from '../copy.ts';
import { emptyImprint } from '../imprint.ts';
import type { PatternDocument } from '../page/page.ts';
import { oneLine } from '../page/printable.ts';
import type { PatternInput } from '../pattern-input.ts';
import { aboutColours } from './about-colours.ts';
import { aboutCover } from './about-cover.ts';
import { aboutKnots } from './about-knots.ts';
import { aboutLanguage } from './about-language.ts';
import { aboutLetters } from './about-letters.ts';
import { aboutLifts } from './about-lifts.ts';
import { aboutPages } from './about-pages.ts';
import { aboutParts } from './about-parts.ts';
import { aboutReserve } from './about-reserve.ts';
import { aboutRowsBeside } from './about-rows-beside.ts';
import { aboutSize } from './about-size.ts';
import { aboutStaleTexts } from './about-stale-texts.ts';
import { aboutWords } from './about-words.ts';
import { type Finding, type FindingKind, weights } from './finding.ts';

/** Of one kind, so many are told one by one; how many more there are is told with the last. */
const MOST_ALIKE = 5;

/** `document` is what `layOutPattern` made of the input. The weightiest first, and the order of the looking among equals. */
export function preflight(input: PatternInput, document: PatternDocument): Finding[] {
  const asked = { imprint: emptyImprint, copy: copyOf(input.design), ...input };
  const own = new Set([input.design.title, ...input.design.yarns.map(({ name }) => name)].map(oneLine));
  const found = [
    ...aboutKnots(asked),
    ...aboutSize(asked),
    ...aboutReserve(asked),
    ...aboutPages(document, { copy: asked.copy, own }),
    ...aboutLifts(asked, document),
    ...aboutParts(document, input.design),
    ...aboutRowsBeside(asked, document),
    ...aboutColours(asked),
    ...aboutCover(asked, document),
    ...aboutLetters(asked),
    ...aboutWords(asked),
    ...aboutLanguage(asked),
    ...aboutStaleTexts(asked),
  ];
  return fewAlike(found).toSorted((a, b) => weights.indexOf(a.weight) - weights.indexOf(b.weight));
}

function fewAlike(found: readonly Finding[]): Finding[] {
  const counts = new Map<FindingKind, number>();
  for (const { kind } of found) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const told = new Map<FindingKind, number>();
  return found.flatMap((finding): Finding[] => {
    const number = (told.get(finding.kind) ?? 0) + 1;
    told.set(finding.kind, number);
    if (number > MOST_ALIKE) return [];
    const more = counts.get(finding.kind)! - MOST_ALIKE;
    if (number < MOST_ALIKE || more <= 0) return [finding];
    return [
      {
        ...finding,
        mend: `${finding.mend} ${counted(more, 'more finding is', 'more findings are')} like this one.`,
      },
    ];
  });
}
