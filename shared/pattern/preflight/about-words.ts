/** Names, texts and editions that a buyer looks for. */

import { changesSinceLast } from '../editions/edition.ts';
import type { Imprint } from '../imprint.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding } from './finding.ts';

export function aboutWords({
  design,
  chart,
  edition,
  imprint,
}: Pick<PatternInput, 'design' | 'chart' | 'edition'> & { readonly imprint: Imprint }): Finding[] {
  const findings: (Finding | false)[] = [
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
      place: { on: 'text', text: 'terms' },
    },
  ];
  // A copy for the other hand is of an edition too, though it begins at the other side.
  return [...findings.filter((each) => each !== false), ...(edition ? [] : editions({ design, chart }))];
}

/** Copies that are not alike must not look as if they were: the number of an edition tells them apart. */
function editions({ design, chart }: Pick<PatternInput, 'design' | 'chart'>): Finding[] {
  const last = design.editions?.at(-1);
  if (!last) return [];
  const changes = changesSinceLast(design, chart).filter(({ kind }) => kind !== 'copy');
  if (changes.length === 0) return [];
  return [
    {
      kind: 'changed-since-edition',
      weight: 'note',
      sentence: `The design has changed since edition ${last.number}, so no edition stands on the pages.`,
      mend: `Publish edition ${last.number + 1} before you sell it.`,
      place: { on: 'setting', setting: 'editions' },
    },
  ];
}
