/** Texts of the designer's own that tell a figure or a side of the first version which is another in this copy. */
import type { FirstTextsInput } from '../first-texts.ts';
import { inQuotes } from '../flow/in-quotes.ts';
import { staleTexts } from '../stale-texts.ts';
import { patternTexts } from '../words/edition-words.ts';
import type { Finding } from './finding.ts';

export function aboutStaleTexts(input: FirstTextsInput): Finding[] {
  return staleTexts(input).map(({ text, says, now }) => ({
    kind: 'text-stale',
    weight: 'doubt',
    sentence: `${patternTexts.en[text]} says ${inQuotes(says)}, where this copy has ${inQuotes(now)}.`,
    mend: 'Put the figure or the side right, or go back to the first version, which follows the design.',
    place: { on: 'text', text },
  }));
}
