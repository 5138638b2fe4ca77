/**
 * Preflight: what would disappoint a buyer, looked for before the pattern is sold. The design and its figures are looked at, and the
 * pages as they are laid out. It finds, and changes nothing.
 */
import { emptyImprint } from '../imprint.ts';
import type { PatternDocument } from '../page.ts';
import type { PatternInput } from '../pattern-input.ts';
import { aboutColours } from './about-colours.ts';
import { aboutKnots } from './about-knots.ts';
import { aboutPages } from './about-pages.ts';
import { aboutWords } from './about-words.ts';
import { type Finding, weights } from './finding.ts';

/** `document` is what `layOutPattern` made of the input. The weightiest first, and the order of the looking among equals. */
export function preflight(input: PatternInput, document: PatternDocument): Finding[] {
  const asked = { imprint: emptyImprint, ...input };
  const found = [
    ...aboutKnots(asked),
    ...aboutPages(document),
    ...aboutColours(asked),
    ...aboutWords(asked, document),
  ];
  return found.toSorted((a, b) => weights.indexOf(a.weight) - weights.indexOf(b.weight));
}
