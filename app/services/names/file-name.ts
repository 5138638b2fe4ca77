/**
 * File names that every platform takes: Windows forbids the most, so its rules hold everywhere, and a design can be
 * carried from one machine to another.
 */
import { type Problem, problem } from '../../../shared/result.ts';
import { endings } from './endings.ts';

export const DESIGN_ENDING = endings.design[0];

/** Most disks take 255 bytes of UTF-8 (ext4) or 255 UTF-16 units (NTFS, APFS); room is left for numbers and endings. */
const STEM_BYTES = 200;
const NAME_BYTES = 255;

const forbidden = /[<>:"/\\|?*\p{Cc}\p{Cs}\u2028\u2029]/gu;
/** Device names that Windows keeps for itself, with any ending. */
const reserved = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\.|$)/i;

/** A stem of a file name for a title, never empty: 'A/B: fox.' gives 'A B fox'. */
export function stemFor(title: string): string {
  const spaced = title.normalize('NFC').replace(forbidden, ' ').replace(/\s+/gu, ' ');
  const trimmed = trimName(cutToBytes(trimName(spaced), STEM_BYTES));
  if (trimmed === '') return 'Design';
  return reserved.test(trimmed) ? `${trimmed.split('.')[0]} design` : trimmed;
}

/** Null where every platform takes the name as it is; else what is wrong with it. */
export function nameProblem(name: string): Problem | null {
  const fault = nameFault(name);
  return fault ? problem('bad-name', `${fault} Choose another name.`).problem : null;
}

function nameFault(name: string): string | null {
  if (trimName(name) === '') return 'A file needs a name.';
  if (name.search(forbidden) >= 0)
    return 'A file name can’t hold any of < > : " / \\ | ? * nor a line break.';
  if (name.startsWith('.')) return 'A file name that begins with a dot is hidden.';
  if (/[. ]$/.test(name)) return 'A file name can’t end with a dot or a space.';
  if (reserved.test(name)) return `“${name}” is a name that Windows keeps for itself.`;
  if (Buffer.byteLength(name) > NAME_BYTES) return 'The file name is too long.';
  return null;
}

/** Dots and spaces at the ends: hidden on one platform, dropped on another. */
function trimName(name: string): string {
  return name.replace(/^[.\s]+|[.\s]+$/gu, '');
}

/** Whole characters only. */
function cutToBytes(text: string, bytes: number): string {
  let length = 0;
  let cut = '';
  for (const { segment } of new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)) {
    length += Buffer.byteLength(segment);
    if (length > bytes) break;
    cut += segment;
  }
  return cut;
}
