/** The texts of a pattern that its designer can write anew. */
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import type { TextName } from '../pattern-deeds.ts';

export interface PatternText {
  readonly name: TextName;
  /** Where it is printed. */
  readonly part: PatternPart;
  readonly label: string;
  readonly hint: string;
}

export const patternTexts: readonly PatternText[] = [
  {
    name: 'welcome',
    part: 'welcome',
    label: 'Welcome',
    hint: 'Greets the buyer, and says what the picture is about.',
  },
  { name: 'skill', part: 'welcome', label: 'Skill', hint: 'What a maker should know already.' },
  {
    name: 'terms',
    part: 'welcome',
    label: 'Terms of use',
    hint: 'What a buyer may do with the pattern, and with what is made by it.',
  },
  {
    name: 'notes',
    part: 'materials',
    label: 'Notes on the materials',
    hint: 'From you to the maker, on the materials page.',
  },
  {
    name: 'reading',
    part: 'reading',
    label: 'Reading the chart',
    hint: 'A line is a sentence of the list. How many pages the chart has is added.',
  },
  { name: 'order', part: 'reading', label: 'Order of work', hint: 'A line is a step.' },
  { name: 'finishing', part: 'finishing', label: 'Finishing steps', hint: 'A line is a step.' },
  {
    name: 'care',
    part: 'care',
    label: 'Care',
    hint: 'A line is a paragraph. What stands before its first colon is its title.',
  },
  {
    name: 'cautions',
    part: 'care',
    label: 'Further cautions',
    hint: 'Stand after the usual ones, which are always printed with this part. Written as the care is.',
  },
];
