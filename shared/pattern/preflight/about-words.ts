/** Parts and words that a buyer looks for. */
import type { PatternPart } from '../../design/pattern-schema.ts';
import type { Imprint } from '../imprint.ts';
import type { PatternDocument } from '../page.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding } from './finding.ts';

export function aboutWords(
  { design, imprint }: Pick<PatternInput, 'design'> & { readonly imprint: Imprint },
  { pages, notices }: PatternDocument,
): Finding[] {
  const printed = new Set(pages.map(({ part }) => part));
  const lacks = (...parts: readonly PatternPart[]) => !parts.some((part) => printed.has(part));
  const findings: (Finding | false)[] = [
    lacks('chart', 'chart-symbols', 'rows') && {
      kind: 'no-chart',
      weight: 'fault',
      sentence: 'Neither the chart nor the written rows are printed: nobody can follow this pattern.',
      mend: 'Add the chart to the parts.',
      place: { on: 'setting', setting: 'parts' },
    },
    lacks('materials') && {
      kind: 'no-materials',
      weight: 'doubt',
      sentence: 'No page says what to buy.',
      mend: 'Add the materials to the parts.',
      place: { on: 'setting', setting: 'parts' },
    },
    design.bundles?.fitted === true &&
      lacks('cut-list') && {
        kind: 'lengths-not-told',
        weight: 'doubt',
        sentence: 'Pieces are cut to measure, but no page says how long each of them is.',
        mend: 'Add the cut list to the parts, or cut every piece at the working length, on the Plan screen under Bundles.',
        place: { on: 'setting', setting: 'parts' },
      },
    lacks('care') && {
      kind: 'no-cautions',
      weight: 'doubt',
      sentence: 'The page of cautions and care is not printed.',
      mend: 'Add it to the parts: blades, fire and cords can hurt somebody.',
      place: { on: 'setting', setting: 'parts' },
    },
    design.designer.trim() === '' &&
      imprint.name.trim() === '' && {
        kind: 'no-designer',
        weight: 'doubt',
        sentence: 'Nobody is named as the designer.',
        mend: 'Write your name into the imprint, or the designer into the hanging.',
        place: { on: 'setting', setting: 'imprint' },
      },
    imprint.contact.every((line) => line.trim() === '') && {
      kind: 'no-contact',
      weight: 'note',
      sentence: 'A buyer with a question can’t reach you: there is no contact.',
      mend: 'Write an address into the imprint.',
      place: { on: 'setting', setting: 'imprint' },
    },
    design.pattern?.texts?.terms?.trim() === '' && {
      kind: 'no-terms',
      weight: 'note',
      sentence: 'The terms are empty: a buyer does not know what they may do with the pattern.',
      mend: 'Write terms, or go back to the first version.',
      place: { on: 'setting', setting: 'terms' },
    },
    ...notices.map(
      (notice): Finding => ({
        kind: 'letters-missing',
        weight: 'doubt',
        sentence: notice,
        mend: 'Write it in other letters.',
      }),
    ),
  ];
  return findings.filter((each) => each !== false);
}
