/** Names that are proposed for files: what they are of, and what tells this one from others of the same design. */
import type { Language } from '../../shared/design/pattern-schema.ts';
import type { Copy } from '../../shared/pattern/copy.ts';
import { type Paper, papers } from '../../shared/pattern/page/papers.ts';
import { languageNames, parcelWords } from '../../shared/pattern/words/parcel-words.ts';

/** Most disks take 255 bytes of UTF-8 (ext4) or 255 UTF-16 units (NTFS, APFS) for a name; some are left for an ending and a number. */
const MOST_BYTES = 230;

/** 'Moth at the window labels.pdf'; `rest` begins with its space or dot. A long title is cut short, so that the rest is seen and every disk takes the name. */
export function suggestedName(title: string, rest: string): string {
  const bytes = (text: string) => new TextEncoder().encode(text).length;
  const room = MOST_BYTES - bytes(rest);
  if (bytes(title) <= room) return `${title}${rest}`;
  let cut = '';
  for (const { segment } of new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(title)) {
    if (bytes(`${cut}${segment}…`) > room) break;
    cut += segment;
  }
  return `${cut.trimEnd()}…${rest}`;
}

/**
 * What tells a copy from the usual one, in English: 'A4', 'Letter symbols, large print, left-handed, Deutsch, for Ines'. A long
 * name of a buyer is cut short.
 */
export function copyInWords({ ink, cells, leftHanded, language, preparedFor }: Copy, paper: Paper): string {
  const words = parcelWords.en;
  const usualLanguage: Language = 'en';
  return [
    ink === 'colour' ? papers[paper].name : `${papers[paper].name} ${words.inks[ink]}`,
    ...(cells === 'large' ? [words.largePrint] : []),
    ...(leftHanded ? [words.hands.left] : []),
    ...(language === usualLanguage ? [] : [languageNames[language]]),
    ...(preparedFor === '' ? [] : [`for ${preparedFor.slice(0, 40).trim()}`]),
  ].join(', ');
}
