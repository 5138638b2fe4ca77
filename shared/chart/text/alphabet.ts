import { type Glyph, readSheet } from './glyph.ts';

/** What an alphabet is made from: its measures in cells, and the sheets its letters and accents are drawn on. */
export interface AlphabetSource {
  readonly label: string;
  /** Rows of a capital. */
  readonly capRows: number;
  /** Rows for accents over a capital. */
  readonly aboveRows: number;
  /** Rows under the baseline. */
  readonly belowRows: number;
  /** Columns between two letters, and rows between two lines, unless the maker asks for others. */
  readonly letterGap: number;
  readonly lineGap: number;
  /** Columns of a space, without the gaps at its sides. */
  readonly spaceColumns: number;
  readonly letters: string;
  readonly marks: { readonly odd: string; readonly even: string };
}

export interface Alphabet extends Omit<AlphabetSource, 'letters' | 'marks'> {
  readonly letters: ReadonlyMap<string, Glyph>;
  readonly oddMarks: ReadonlyMap<string, Glyph>;
  readonly evenMarks: ReadonlyMap<string, Glyph>;
}

/** An alphabet with its sheets read. */
export function makeAlphabet({ letters, marks, ...measures }: AlphabetSource): Alphabet {
  return {
    ...measures,
    letters: readSheet(letters),
    oddMarks: byCharacter(readSheet(marks.odd)),
    evenMarks: byCharacter(readSheet(marks.even)),
  };
}

/** Marks are named by their code points on the sheet, where a combining character would cling to its neighbour. */
function byCharacter(marks: ReadonlyMap<string, Glyph>): Map<string, Glyph> {
  return new Map([...marks].map(([code, glyph]) => [String.fromCodePoint(Number.parseInt(code, 16)), glyph]));
}
