/**
 * How a hanging is kept, for the papers that go with it: in the designer's own words, else in fewer than the pattern has for it; and
 * what the designer warns of beyond what is told of every hanging.
 */
import { careEntries } from '../part-pages/care-entries.ts';
import type { PatternContext } from '../pattern-input.ts';
import type { Caution } from '../words/care-words.ts';
import { hangingWords } from '../words/hanging-words.ts';

export function howItIsKept({ design, copy, printer }: PatternContext): readonly Caution[] {
  const { care, cautions = '' } = design.pattern?.texts ?? {};
  return [
    ...careEntries(cautions, printer),
    ...(care === undefined ? hangingWords[copy.language].care.usual : careEntries(care, printer)),
  ];
}
