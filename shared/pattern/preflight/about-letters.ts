/** Texts of the designer with letters that the faces lack, each with the place where it is written. */

import type { Copy } from '../copy.ts';
import type { PatternText } from '../editions/changes-since.ts';
import { missingCharacters } from '../faces/measure-text.ts';
import { inQuotes } from '../flow/in-quotes.ts';
import type { Imprint } from '../imprint.ts';
import { oneLine } from '../page/printable.ts';
import type { PatternInput } from '../pattern-input.ts';
import { patternTexts } from '../words/edition-words.ts';
import type { Finding, Place, Setting } from './finding.ts';

interface Source {
  /** 'The title', as a sentence begins with it. */
  readonly what: string;
  readonly text: string;
  readonly place: Place;
}

type Input = Pick<PatternInput, 'design' | 'edition'> & { readonly imprint: Imprint; readonly copy: Copy };

export function aboutLetters(input: Input): Finding[] {
  return sourcesOf(input).flatMap(({ what, text, place }): Finding[] => {
    // All faces for texts hold the same letters: they are cut from one family.
    const missing = missingCharacters(oneLine(text), 'sans');
    if (missing.length === 0) return [];
    const shown = missing.slice(0, MOST).join(' ');
    return [
      {
        kind: 'letters-missing',
        weight: 'fault',
        sentence: `${what} ${inQuotes(text)} has ${missing.length === 1 ? 'a letter' : 'letters'} that can’t be printed: ${shown}${missing.length > MOST ? ' …' : ''}. A question mark stands for each.`,
        mend: 'Write it in Latin, Greek or Cyrillic letters.',
        place,
      },
    ];
  });
}

const MOST = 8;

function sourcesOf({ design, imprint, copy, edition }: Input): Source[] {
  const at = (setting: Setting): Place => ({ on: 'setting', setting });
  const texts = Object.entries(design.pattern?.texts ?? {}) as [PatternText, string | undefined][];
  return [
    { what: 'The title', text: design.title, place: at('title') },
    { what: 'The designer', text: design.designer, place: at('designer') },
    { what: 'The cord', text: design.cord.name, place: at('title') },
    ...design.yarns.map(({ name }) => ({ what: 'The yarn', text: name, place: at('yarns') })),
    ...texts.map(([name, text = '']) => ({
      what: patternTexts.en[name],
      text,
      place: { on: 'text', text: name } as const,
    })),
    ...[imprint.name, imprint.workshop, ...imprint.contact, imprint.about].map((text) => ({
      what: 'In the imprint,',
      text,
      place: at('imprint'),
    })),
    { what: 'The name of who this copy is for,', text: copy.preparedFor, place: at('copy') },
    ...(edition?.errata ?? []).map(({ text }) => ({ what: 'The erratum', text, place: at('editions') })),
  ];
}
