import type { Alphabet } from './alphabet.ts';
import type { Glyph } from './glyph.ts';

/**
 * A letter with its accents, put together from the alphabet's drawings: an accent above stands one row clear of the
 * letter (or close on it, where the line has no more room), one below hangs from it. `character` is one letter and
 * its combining characters. Null where the alphabet lacks a part, or the line has no room for it.
 */
export function composeGlyph(alphabet: Alphabet, character: string): Glyph | null {
  const [letter = '', ...marks] = character.normalize('NFD');
  const undotted = marks.some((mark) => !below.has(mark)) ? (dotless[letter] ?? letter) : letter;
  const base = alphabet.letters.get(undotted);
  if (!base) return null;
  const parts: Part[] = [{ rows: base.rows, column: 0, rise: base.rise }];
  let top = base.rise;
  for (const spelt of marks) {
    const mark = spelt === cedilla && commaBelow.has(letter) ? comma : spelt;
    const part = below.has(mark) ? partBelow(alphabet, base, mark) : partAbove(alphabet, base, mark, top);
    if (!part) return null;
    parts.push(part);
    top = Math.max(top, part.rise);
  }
  return join(parts, base.columns);
}

/** Rows of a drawing with its left edge and its top: `rise` rows above the baseline. */
interface Part {
  readonly rows: readonly string[];
  readonly column: number;
  readonly rise: number;
}

const comma = '\u0326';
const cedilla = '\u0327';
const ogonek = '\u0328';
const below: ReadonlySet<string> = new Set([comma, cedilla, ogonek]);

/** Unicode spells these with a cedilla, and readers know them with a comma. */
const commaBelow: ReadonlySet<string> = new Set('GKLNRklnr');

/** An accent takes the place of the dot. */
const dotless: Readonly<Record<string, string>> = { i: 'ı', j: 'ȷ' };

function partAbove(alphabet: Alphabet, base: Glyph, mark: string, top: number): Part | null {
  const drawing = drawingOf(alphabet, base, mark);
  if (!drawing) return null;
  const rise = Math.min(top + 1 + drawing.rows.length, alphabet.capRows + alphabet.aboveRows);
  if (rise - drawing.rows.length < top) return null;
  return { rows: drawing.rows, column: (base.columns - drawing.columns) / 2, rise };
}

function partBelow(alphabet: Alphabet, base: Glyph, mark: string): Part | null {
  const drawing = drawingOf(alphabet, base, mark);
  // A letter that hangs below the baseline itself has no room for a mark there.
  if (!drawing || base.rows.length > base.rise) return null;
  const free = base.columns - drawing.columns;
  return { rows: drawing.rows, column: mark === ogonek ? free : free / 2, rise: drawing.rise };
}

/** A mark is drawn twice, so that its middle can fall on a column as well as between two. */
function drawingOf(alphabet: Alphabet, { columns }: Glyph, mark: string): Glyph | undefined {
  return (columns % 2 === 0 ? alphabet.evenMarks : alphabet.oddMarks).get(mark);
}

/** The parts in one drawing, as wide as the letter or as far as its accents reach. */
function join(parts: readonly Part[], columns: number): Glyph {
  const rise = Math.max(...parts.map((part) => part.rise));
  const foot = Math.min(...parts.map((part) => part.rise - part.rows.length));
  let from = 0;
  let to = columns;
  const knots = parts.flatMap((part) => knotsOf(part));
  for (const { column } of knots) {
    from = Math.min(from, column);
    to = Math.max(to, column + 1);
  }
  const drawn = Array.from({ length: rise - foot }, () => new Array<string>(to - from).fill('.'));
  for (const knot of knots) drawn[rise - knot.rise]![knot.column - from] = '#';
  return { columns: to - from, rows: drawn.map((row) => row.join('')), rise };
}

function knotsOf({ rows, column, rise }: Part): { rise: number; column: number }[] {
  return rows.flatMap((row, r) =>
    [...row].flatMap((knot, c) => (knot === '#' ? [{ rise: rise - r, column: column + c }] : [])),
  );
}
