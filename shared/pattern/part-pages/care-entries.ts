/** A text on care or cautions as its entries: a line is one; what stands before its first colon, if that is short, is its title. */

import { linesOf } from '../flow/texts.ts';
import type { Printer } from '../page/printable.ts';
import type { Caution } from '../words/care-words.ts';

export function careEntries(words: string, printer: Printer): Caution[] {
  return linesOf(words, printer).map((line) => {
    const [, title = '', text = line] = /^([^:]{1,40}): +(.+)$/u.exec(line) ?? [];
    return { title, text };
  });
}
