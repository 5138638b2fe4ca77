/** Names that are proposed for files: what they are of, and what tells this one from others of the same design. */
import type { Language } from '../../shared/design/pattern-schema.ts';
import type { Copy } from '../../shared/pattern/copy.ts';
import { type Paper, papers } from '../../shared/pattern/page/papers.ts';
import { languageNames, parcelWords } from '../../shared/pattern/words/parcel-words.ts';

/** Most disks take 255 bytes of UTF-8 (ext4) or 255 UTF-16 units (NTFS, APFS) for a name; some are left for an ending and a number. */
const MOST_BYTES = 230;
const MOST_BYTES_OF_BUYER = 60;

/** What some platform takes in no name; the host, which has the last word on names, refuses it. */
const forbidden = /[<>:"/\\|?*\p{Cc}\p{Cs}\u2028\u2029]/gu;

/**
 * 'Moth at the window labels.pdf'; `rest` begins with its space or dot. A long title is cut short, so that the rest is seen and every
 * disk takes the name.
 */
export function suggestedName(title: string, rest: string): string {
  const end = rest.replace(forbidden, ' ');
  const name = title
    .replace(forbidden, ' ')
    .replace(/\s+/gu, ' ')
    .replace(/^[.\s]+/u, '');
  return `${cutShort(name, MOST_BYTES - bytesOf(end)) || 'Design'}${end}`;
}

/** Whole characters only. */
function cutShort(text: string, mostBytes: number): string {
  if (bytesOf(text) <= mostBytes) return text;
  let cut = '';
  for (const { segment } of new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)) {
    if (bytesOf(`${cut}${segment}…`) > mostBytes) break;
    cut += segment;
  }
  return `${cut.trimEnd()}…`;
}

function bytesOf(text: string): number {
  return new TextEncoder().encode(text).length;
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
    ...(preparedFor === '' ? [] : [`for ${cutShort(preparedFor.trim(), MOST_BYTES_OF_BUYER)}`]),
  ].join(', ');
}
