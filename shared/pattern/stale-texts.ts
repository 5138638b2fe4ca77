/**
 * Lines of the designer's own texts that are those of the first version but for a figure or a side, and so tell what was true once:
 * of other settings, other units or the other hand. A text that is written anew is no matter of ours.
 */
import { type FirstTextsInput, firstTexts, type PatternTextName } from './first-texts.ts';

export interface StaleLine {
  readonly text: PatternTextName;
  /** The piece of the line that is another now, and what it would be. */
  readonly says: string;
  readonly now: string;
}

/** At most one of each text: its first. */
export function staleTexts(input: FirstTextsInput): StaleLine[] {
  const own = Object.entries(input.design.pattern?.texts ?? {}) as [PatternTextName, string | undefined][];
  if (own.every(([, words]) => !words)) return [];
  const first = firstTexts(input);
  return own.flatMap(([text, words = '']): StaleLine[] => {
    const now = sentencesOf(first[text]);
    const alike = new Map(now.map((sentence) => [masked(sentence), sentence]));
    for (const sentence of sentencesOf(words)) {
      const then = alike.get(masked(sentence));
      if (then !== undefined && then !== sentence) return [{ text, ...difference(sentence, then) }];
    }
    return [];
  });
}

function sentencesOf(text: string): string[] {
  return text
    .split(/\n|(?<=[.!?:;]) /)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '');
}

/** Figures with their units, and words of sides and counts, as one sign. */
function masked(sentence: string): string {
  return sentence
    .replaceAll(/\d[\d.,/ ]*( ?(mm|cm|m|in|Zoll|yd|g|kg|oz|lb|h|min)\b)?( ?\([^()]*\))?/g, '#')
    .replaceAll(/\b(left|right|linken|rechten|links|rechts)\b/g, '<>')
    .replaceAll(/[# ]+/g, ' ');
}

/** The words that differ, from the first to the last. */
function difference(says: string, now: string): Pick<StaleLine, 'says' | 'now'> {
  const [a, b] = [says.split(/\s/), now.split(/\s/)];
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  let back = 0;
  while (back < Math.min(a.length, b.length) - from && a.at(-1 - back) === b.at(-1 - back)) back++;
  const part = (words: readonly string[]) =>
    words.slice(from, Math.max(from + 1, words.length - back)).join(' ');
  return { says: part(a), now: part(b) };
}
