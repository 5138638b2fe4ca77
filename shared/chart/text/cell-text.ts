/**
 * Text drawn in cells: letters of an alphabet set side by side, with the alphabet's gap between them and no kerning,
 * so that a maker can count the columns of a name beforehand. The lines keep one distance, as near as this text's
 * letters allow; the first line always has the room for accents above it, so that nothing moves while it is typed.
 */
import { limits } from '../../design/limits.ts';
import type { Alphabet } from './alphabet.ts';
import { type AlphabetId, alphabetsById } from './alphabets.ts';
import type { Glyph } from './glyph.ts';
import { glyphFor, missingGlyph } from './glyph-for.ts';

export interface CellText {
  readonly columns: number;
  readonly rows: number;
  /** 1 where a knot is drawn, row by row. */
  readonly cells: Uint8Array;
  /** The characters that the alphabet lacks, each once; an open box stands in their places. */
  readonly missing: readonly string[];
}

export interface CellTextOptions {
  /** Columns between two letters, from 0. */
  readonly letterGap?: number;
  /** Rows between the lowest letter of one line and the highest of the next, from 0. */
  readonly lineGap?: number;
  readonly align?: 'start' | 'middle' | 'end';
}

/** What a text field needs to know of each alphabet. `lineRows` is one line with its accents and descenders. */
export const alphabets: readonly {
  readonly id: AlphabetId;
  readonly label: string;
  readonly capRows: number;
  readonly lineRows: number;
  readonly letterGap: number;
  readonly lineGap: number;
}[] = Object.entries(alphabetsById).map(([id, { label, capRows, letterGap, lineGap, ...room }]) => ({
  id: id as AlphabetId,
  label,
  capRows,
  lineRows: room.aboveRows + capRows + room.belowRows,
  letterGap,
  lineGap,
}));

/**
 * A text as cells. Lines are parted by '\n'. Throws a RangeError beyond `limits.textChars`, which the text field
 * holds.
 */
export function cellText(text: string, id: AlphabetId, options: CellTextOptions = {}): CellText {
  if (text.length > limits.textChars)
    throw new RangeError(`A text has at most ${limits.textChars} characters.`);
  const alphabet = alphabetsById[id];
  const { letterGap = alphabet.letterGap, lineGap = alphabet.lineGap, align = 'start' } = options;
  const missing = new Set<string>();
  const lines = text
    .normalize('NFC')
    .split(/\r\n|\n/)
    .map((line) => setLine(alphabet, line, letterGap, missing));
  const pitch = pitchOf(alphabet, lines) + lineGap;
  const columns = Math.max(...lines.map((line) => line.columns));
  const rows = alphabet.aboveRows + alphabet.capRows + alphabet.belowRows + (lines.length - 1) * pitch;
  const cells = new Uint8Array(columns * rows);
  lines.forEach((line, i) => {
    const baseline = alphabet.aboveRows + alphabet.capRows + i * pitch;
    const indent = Math.floor((columns - line.columns) * shareBefore[align]);
    for (const { glyph, column } of line.letters) {
      draw(cells, columns, glyph, baseline - glyph.rise, indent + column);
    }
  });
  return { columns, rows, cells, missing: [...missing] };
}

/** How much of a line's free room lies before it. */
const shareBefore = { start: 0, middle: 0.5, end: 1 } as const;

interface Line {
  readonly columns: number;
  readonly letters: readonly { readonly glyph: Glyph; readonly column: number }[];
}

function setLine(alphabet: Alphabet, text: string, letterGap: number, missing: Set<string>): Line {
  const letters: { glyph: Glyph; column: number }[] = [];
  let column = 0;
  // A character is a letter with the combining characters that follow it.
  for (const [character] of text.matchAll(/\P{M}\p{M}*|\p{M}+/gu)) {
    const glyph = glyphFor(alphabet, character);
    if (!glyph) missing.add(character);
    const set = glyph ?? missingGlyph(alphabet);
    if (letters.length > 0) column += letterGap;
    letters.push({ glyph: set, column });
    column += set.columns;
  }
  return { columns: column, letters };
}

/** From one baseline to the next without the gap: the deepest letter of a line over the highest of the next. */
function pitchOf(alphabet: Alphabet, lines: readonly Line[]): number {
  const room = lines.slice(1).map((line, i) => {
    const above = Math.max(alphabet.capRows, ...line.letters.map(({ glyph }) => glyph.rise));
    const under = Math.max(0, ...lines[i]!.letters.map(({ glyph }) => glyph.rows.length - glyph.rise));
    return above + under;
  });
  return Math.max(0, ...room);
}

function draw(cells: Uint8Array, columns: number, { rows }: Glyph, top: number, left: number): void {
  rows.forEach((row, r) => {
    for (let c = 0; c < row.length; c++) {
      if (row[c] === '#') cells[(top + r) * columns + left + c] = 1;
    }
  });
}
