/**
 * Entries of a long list, such as written rows, broken into lines between their parts. A part is measured once, however many
 * widths are tried.
 */
import { textWidthMm, wrapText } from '../faces/measure-text.ts';
import type { Face } from '../page/page.ts';
import { LEADING } from '../page/style.ts';

/** A text of one face; what is set without a space before it belongs to the one before. */
export interface EntryText {
  readonly text: string;
  readonly face?: Face;
  /** An arrow behind it, as beside the chart's rows. */
  readonly arrow?: 'right' | 'left';
}

export interface Entry {
  readonly head: string;
  /** Which way the row goes, where an arrow tells it. */
  readonly arrow?: 'right' | 'left';
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

/** Ems of what entries of a copy are set in, and the distance of their lines, in mm. */
export interface EntrySizes {
  readonly textMm: number;
  /** A symbol fills its em and is drawn larger than figures, so that it is told from others. */
  readonly symbolMm: number;
  readonly lineMm: number;
  /** The shaft of an arrow, and the gap before it. */
  readonly arrowMm: number;
  readonly beforeArrowMm: number;
}

/** `bodyMm`: the em of what is read in the copy. */
export function entrySizes(bodyMm: number): EntrySizes {
  const textMm = bodyMm * 0.95;
  return {
    textMm,
    symbolMm: textMm * 1.2,
    lineMm: textMm * LEADING,
    arrowMm: textMm * 0.9,
    beforeArrowMm: textMm * 0.4,
  };
}

/** What goes on of a part that has lines of its own. */
const HANG_MM = 3;

/** The lines that the entry takes in a width, in mm. */
export function entryLines(
  { head, arrow, parts, partByLine = false }: Entry,
  sizes: EntrySizes,
): (widthMm: number) => EntryLine[] {
  const { textMm } = sizes;
  const headMm = textWidthMm(head, 'sans-bold', textMm) + (arrow ? sizes.beforeArrowMm + sizes.arrowMm : 0);
  const partsMm = parts.map((part) => widthOf(part, sizes));
  const spaceMm = textWidthMm(' ', 'sans', textMm);
  return (widthMm) => {
    let texts: EntryText[] = [{ text: head, face: 'sans-bold', ...(arrow && { arrow }) }];
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
        const broken = brokenText(part.map(({ text }) => text).join(''), textMm, widthMm, indentMm);
        broken.forEach((text, line) => {
          begin([{ text }], line === 0 ? 0 : indentMm);
        });
        room = widthMm - indentMm - textWidthMm(broken.at(-1)!, 'sans', textMm);
      }
    });
    return lines;
  };
}

/** The first line takes the whole width, those that go on are indented. */
function brokenText(text: string, textMm: number, widthMm: number, indentMm: number): string[] {
  const [first = ''] = wrapText(text, 'sans', textMm, widthMm);
  const rest = text.normalize('NFC').slice(first.length).trim();
  return rest === '' ? [first] : [first, ...wrapText(rest, 'sans', textMm, widthMm - indentMm)];
}

function spaced([first, ...rest]: readonly EntryText[]): EntryText[] {
  return first ? [{ ...first, text: ` ${first.text}` }, ...rest] : [];
}

function widthOf(texts: readonly EntryText[], { textMm, symbolMm }: EntrySizes): number {
  return texts.reduce(
    (sum, { text, face = 'sans' }) => sum + textWidthMm(text, face, face === 'symbols' ? symbolMm : textMm),
    0,
  );
}
