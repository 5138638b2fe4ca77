import type { Alphabet } from './alphabet.ts';
import { composeGlyph } from './compose-glyph.ts';
import type { Glyph } from './glyph.ts';

/**
 * How an alphabet draws one character (a letter and its combining characters, in Unicode's composed form): as its
 * sheet draws it, else with a look-alike's drawing, else put together from letters or from letter and accents.
 * Null where it can't.
 */
export function glyphFor(alphabet: Alphabet, character: string): Glyph | null {
  if (spaces.test(character)) return { columns: alphabet.spaceColumns, rows: [], rise: 0 };
  const name = lookAlikes[character] ?? character;
  const letters = adjoined[name];
  if (letters) return adjoin(alphabet, letters);
  return alphabet.letters.get(name) ?? composeGlyph(alphabet, name);
}

/** An open box as high as a capital, for a character that the alphabet lacks. */
export function missingGlyph({ capRows, letters }: Alphabet): Glyph {
  const columns = letters.get('H')!.columns;
  const edge = '#'.repeat(columns);
  const side = `#${'.'.repeat(columns - 2)}#`;
  return { columns, rows: [edge, ...new Array<string>(capRows - 2).fill(side), edge], rise: capRows };
}

/** A space, also one that doesn't break, a narrow one, and the tab. */
const spaces = /^[\t \u00a0\u2002-\u200a\u202f]$/;

/** Characters that every lettering draws alike, or that keyboards and word processors exchange. */
const lookAlikes: Readonly<Record<string, string>> = {
  Đ: 'Ð',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '‚': ',',
  '‐': '-',
  '‑': '-',
  '−': '–',
};

/** Characters that are two or three letters side by side. */
const adjoined: Readonly<Record<string, string>> = {
  ĳ: 'ij',
  Ĳ: 'IJ',
  ŀ: 'l·',
  Ŀ: 'L·',
  ŉ: "'n",
  '…': '...',
};

function adjoin(alphabet: Alphabet, letters: string): Glyph | null {
  const drawn = [...letters].map((letter) => alphabet.letters.get(letter));
  const rise = Math.max(...drawn.map((glyph) => glyph?.rise ?? 0));
  const foot = Math.min(...drawn.map((glyph) => (glyph ? glyph.rise - glyph.rows.length : 0)));
  const gap = '.'.repeat(alphabet.letterGap);
  const rows: string[] = [];
  for (let height = rise; height > foot; height--) {
    rows.push(
      drawn.map((glyph) => glyph?.rows[glyph.rise - height] ?? '.'.repeat(glyph?.columns ?? 0)).join(gap),
    );
  }
  return { columns: rows[0]?.length ?? 0, rows, rise };
}
