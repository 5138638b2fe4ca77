/**
 * Text as the faces can print it. A letter that a face lacks becomes a question mark that is seen, never an empty box
 * or nothing, and is told about once in the pattern's notices.
 */
import { missingCharacters } from '../faces/measure-text.ts';
import { inQuotes } from '../flow/in-quotes.ts';
import type { Face } from './page.ts';

export interface Printer {
  /** One line: line breaks and tabs become spaces. */
  printable(text: string, face?: Face): string;
  /** A sentence for each text with letters that were replaced. */
  readonly notices: readonly string[];
}

/** What would be printed of a text if the faces had all its letters: line breaks and tabs become spaces. */
export function oneLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .trim();
}

export function newPrinter(): Printer {
  const notices = new Set<string>();
  const known = new Map<string, string>();
  return {
    printable(text, face = 'sans') {
      const id = `${face} ${text}`;
      const before = known.get(id);
      if (before !== undefined) return before;
      const line = oneLine(text);
      const missing = new Set(missingCharacters(line, face));
      const shown =
        missing.size === 0 ? line : [...line].map((each) => (missing.has(each) ? '?' : each)).join('');
      if (missing.size > 0) {
        notices.add(
          `${inQuotes(line)} has letters that can’t be printed (${[...missing].slice(0, 8).join(' ')}): a question mark stands for each of them.`,
        );
      }
      known.set(id, shown);
      return shown;
    },
    get notices() {
      return [...notices];
    },
  };
}
