/** How a hanging is kept, for the papers that go with it: in the designer's own words, else in fewer than the pattern has for it. */
import { careEntries } from '../part-pages/care-entries.ts';
import type { PatternContext } from '../pattern-input.ts';
import type { Caution } from '../words/care-words.ts';
import { hangingWords } from '../words/hanging-words.ts';

export function howItIsKept({ design, copy, printer }: PatternContext): readonly Caution[] {
  const own = design.pattern?.texts?.care;
  return own === undefined ? hangingWords[copy.language].care.usual : careEntries(own, printer);
}
