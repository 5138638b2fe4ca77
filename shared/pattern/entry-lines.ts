/**
 * Entries of a long list, such as written rows, broken into lines between their parts. A part is measured once, however many
 * widths are tried.
 */
import { textWidthMm, wrapText } from './faces/measure-text.ts';
import type { Face } from './page.ts';
import { LEADING, sizes } from './style.ts';

/** A text of one face; what is set without a space before it belongs to the one before. */
export interface EntryText {
  readonly text: string;
  readonly face?: Face;
}

export interface Entry {
  readonly head: string;
  /** What stays together on a line: a count with its yarn and cords. Between two of them is a space. */
  readonly parts: readonly (readonly EntryText[])[];
  /** Whether each part begins a line; the first one goes on behind the head. */
  readonly partByLine?: boolean;
  /** More space comes behind the last entry of a group. */
  readonly endsGroup: boolean;
}

export interface EntryLine {
  readonly texts: readonly EntryText[];
  /** From the left end of the entry's lines. */
  readonly indentMm: number;
}

export const ENTRY_LINE_MM = sizes.body * 0.95 * LEADING;

const SIZE_MM = sizes.body * 0.95;
/** A symbol fills its em and is drawn larger than figures, so that it is told from others. */
const SYMBOL_MM = SIZE_MM * 1.2;
/** What goes on of a part that has lines of its own. */
const HANG_MM = 3;

/** Em of a face in entries. */
export function emOf(face: Face): number {
  return face === 'symbols' ? SYMBOL_MM : SIZE_MM;
}

/** The lines that the entry takes in a width, in mm. */
export function entryLines({ head, parts, partByLine = false }: Entry): (widthMm: number) => EntryLine[] {
  const headMm = textWidthMm(head, 'sans-bold', SIZE_MM);
  const partsMm = parts.map(widthOf);
  const spaceMm = textWidthMm(' ', 'sans', SIZE_MM);
  return (widthMm) => {
    let texts: EntryText[] = [{ text: head, face: 'sans-bold' }];
    const lines: EntryLine[] = [{ texts, indentMm: 0 }];
    let room = widthMm - headMm;
    const begin = (begun: readonly EntryText[], indentMm: number) => {
      texts = [...begun];
      lines.push({ texts, indentMm });
    };
    parts.forEach((part, i) => {
      const partMm = partsMm[i]!;
      if ((i === 0 || !partByLine) && spaceMm + partMm <= room) {
        texts.push(...spaced(part));
        room -= spaceMm + partMm;
      } else if (partMm <= widthMm) {
        begin(part, 0);
        room = widthMm - partMm;
      } else {
        // A single part that is longer than a line: in one face, as names are.
        const indentMm = partByLine ? HANG_MM : 0;
        const broken = brokenText(part.map(({ text }) => text).join(''), widthMm, indentMm);
        broken.forEach((text, line) => {
          begin([{ text }], line === 0 ? 0 : indentMm);
        });
        room = widthMm - indentMm - textWidthMm(broken.at(-1)!, 'sans', SIZE_MM);
      }
    });
    return lines;
  };
}

/** The first line takes the whole width, those that go on are indented. */
function brokenText(text: string, widthMm: number, indentMm: number): string[] {
  const [first = ''] = wrapText(text, 'sans', SIZE_MM, widthMm);
  const rest = text.normalize('NFC').slice(first.length).trim();
  return rest === '' ? [first] : [first, ...wrapText(rest, 'sans', SIZE_MM, widthMm - indentMm)];
}

function spaced([first, ...rest]: readonly EntryText[]): EntryText[] {
  return first ? [{ ...first, text: ` ${first.text}` }, ...rest] : [];
}

function widthOf(texts: readonly EntryText[]): number {
  return texts.reduce((sum, { text, face = 'sans' }) => sum + textWidthMm(text, face, emOf(face)), 0);
}
