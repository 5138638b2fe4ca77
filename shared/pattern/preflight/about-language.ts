/**
 * The designer's own texts, which stand in every copy as they were written. One in another language than its copy is found by the
 * small words that every sentence of a language is full of.
 */
import type { Language } from '../../design/pattern-schema.ts';
import type { Copy } from '../copy.ts';
import type { PatternText } from '../editions/changes-since.ts';
import type { PatternInput } from '../pattern-input.ts';
import { patternTexts } from '../words/edition-words.ts';
import type { Finding } from './finding.ts';

/** The commonest words of a language that no other of these has. */
const smallWords: Readonly<Record<Language, ReadonlySet<string>>> = {
  en: new Set('the and of to is are it you your with for this that be have not from or by'.split(' ')),
  de: new Set(
    'der die das und ist sind nicht mit für sie ihr ihre den dem ein eine auf zu von oder'.split(' '),
  ),
};

const names: Readonly<Record<Language, string>> = { en: 'English', de: 'German' };

/** Fewer of them may be a name or a quotation. */
const LEAST = 3;

export function aboutLanguage({
  design,
  copy: { language },
}: Pick<PatternInput, 'design'> & { readonly copy: Pick<Copy, 'language'> }): Finding[] {
  const texts = Object.entries(design.pattern?.texts ?? {}) as [PatternText, string | undefined][];
  return texts.flatMap(([text, words = '']): Finding[] => {
    const seems = languageOf(words);
    if (seems === null || seems === language) return [];
    return [
      {
        kind: 'language-mixed',
        weight: 'doubt',
        sentence: `${patternTexts.en[text]} seems to be in ${names[seems]}, and this copy is in ${names[language]}.`,
        mend: `Write it in ${names[language]}, or go back to the first version, which every language has.`,
        place: { on: 'text', text },
      },
    ];
  });
}

/** Null where it can't be told. */
function languageOf(text: string): Language | null {
  const words = text.toLowerCase().split(/[^\p{L}]+/u);
  const counts = (Object.keys(smallWords) as Language[])
    .map((language) => ({ language, count: words.filter((word) => smallWords[language].has(word)).length }))
    .toSorted((a, b) => b.count - a.count);
  const [most, next] = counts;
  return most && most.count >= LEAST && most.count > 2 * (next?.count ?? 0) ? most.language : null;
}
