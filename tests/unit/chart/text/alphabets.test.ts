/** The alphabets' own drawings: what they hold, and that no two of them can be taken for one another. */
import { describe, expect, it } from 'vitest';
import { alphabetsById } from '../../../../shared/chart/text/alphabets.ts';
import type { Glyph } from '../../../../shared/chart/text/glyph.ts';
import { glyphFor } from '../../../../shared/chart/text/glyph-for.ts';

const alphabets = Object.entries(alphabetsById);

/** The characters from one code point to another, both included, that a pattern holds of. */
function block(first: number, last: number, wanted: RegExp): string[] {
  const characters = Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i));
  return characters.filter((character) => wanted.test(character));
}

// Blocks as the Unicode Standard bounds them (Blocks.txt); what is a letter is told by its general category.
const latin = [
  ...block(0x00, 0x7f, /[\p{L}\p{Nd}]/u),
  ...block(0x80, 0xff, /\p{L}/u).filter((letter) => !'ªºµ'.includes(letter)),
  // ŉ (U+0149) is deprecated by the Standard; old texts hold it all the same.
  ...block(0x100, 0x17f, /\p{L}/u),
];
const signs = [...'.,;:!?\'"-–()/&+=%#@*·«»¡¿„—_[]<>|°×÷$€£…'];

/** Letters that the Standard tells apart by their small letters only: Đ and Ð look alike in every lettering. */
const twins = new Set(['Đ']);

function pictureOf(glyph: Glyph): string {
  return [`rise ${glyph.rise}`, ...glyph.rows].join('\n');
}

describe.each(alphabets)('the alphabet %s', (_, alphabet) => {
  const drawn = [...latin, ...signs].map((character) => ({
    character,
    glyph: glyphFor(alphabet, character)!,
  }));

  it('has every letter of Latin-1 and Latin Extended-A, the digits and the signs', () => {
    expect(latin).toHaveLength(26 * 2 + 10 + 62 + 128);
    expect(drawn.filter(({ glyph }) => glyph === null).map(({ character }) => character)).toEqual([]);
  });

  it('draws no two characters alike', () => {
    const seen = new Map<string, string>();
    const alike: string[] = [];
    for (const { character, glyph } of drawn) {
      if (twins.has(character)) continue;
      const picture = pictureOf(glyph);
      const other = seen.get(picture);
      if (other) alike.push(`${other} ${character}`);
      seen.set(picture, character);
    }
    expect(alike).toEqual([]);
  });

  it('tells characters that are easily mistaken apart by at least two knots', () => {
    for (const [one, other] of [
      'O0',
      'Il',
      'I1',
      'l1',
      'S5',
      'B8',
      'Z2',
      'UV',
      'uv',
      'DO',
      'ao',
      'ce',
      'rn',
    ]) {
      const [a, b] = [one!, other!].map((character) => glyphFor(alphabet, character)!);
      expect(knotsThatDiffer(a!, b!), `${one} and ${other}`).toBeGreaterThanOrEqual(2);
    }
  });

  it('has rows of one length in each drawing, and nothing beyond its line', () => {
    for (const { character, glyph } of drawn) {
      expect(new Set(glyph.rows.map((row) => row.length)), character).toEqual(new Set([glyph.columns]));
      expect(glyph.rise, character).toBeLessThanOrEqual(alphabet.capRows + alphabet.aboveRows);
      expect(glyph.rows.length - glyph.rise, character).toBeLessThanOrEqual(alphabet.belowRows);
    }
  });

  it('has capitals and digits of one height, and small letters too', () => {
    const heights = (characters: string) =>
      new Set([...characters].map((character) => glyphFor(alphabet, character)!.rise));
    expect(heights('ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789')).toEqual(new Set([alphabet.capRows]));
    expect(heights('acegmnopqrsuvwxyz').size).toBe(1);
    expect(heights('bdfhkl').size).toBe(1);
  });

  it('draws each accent for an odd and for an even middle, as wide as it says', () => {
    expect([...alphabet.oddMarks.keys()]).toEqual([...alphabet.evenMarks.keys()]);
    for (const [mark, { columns }] of alphabet.oddMarks) expect(columns % 2, `odd ${mark}`).toBe(1);
    for (const [mark, { columns }] of alphabet.evenMarks) expect(columns % 2, `even ${mark}`).toBe(0);
  });

  it('leaves no empty column at the sides of a letter or digit, so that the gaps are even', () => {
    for (const { character, glyph } of drawn.filter((each) => /^[\p{L}\p{Nd}]$/u.test(each.character))) {
      expect(
        glyph.rows.some((row) => row.startsWith('#')),
        `left of ${character}`,
      ).toBe(true);
      expect(
        glyph.rows.some((row) => row.endsWith('#')),
        `right of ${character}`,
      ).toBe(true);
    }
  });

  it('keeps the letter whole under its accents', () => {
    for (const { character, glyph } of drawn) {
      const [letter = '', ...marks] = character.normalize('NFD');
      if (marks.length === 0 || alphabet.letters.has(character)) continue;
      const base = glyphFor(
        alphabet,
        marks.includes('\u0328') ? letter : ({ i: 'ı', j: 'ȷ' }[letter] ?? letter),
      )!;
      expect(holds(glyph, base), character).toBe(true);
    }
  });

  it('keeps an accent above clear of its letter, the ring of Ů excepted where the line is low', () => {
    for (const { character, glyph } of drawn) {
      const [letter = '', mark = ''] = character.normalize('NFD');
      if (!/[\u0300-\u030c]/.test(mark) || alphabet.letters.has(character) || character === 'Ů') continue;
      const base = glyphFor(alphabet, { i: 'ı', j: 'ȷ' }[letter] ?? letter)!;
      expect(glyph.rows[glyph.rise - base.rise - 1], character).not.toContain('#');
    }
  });
});

function knotsThatDiffer(a: Glyph, b: Glyph): number {
  let count = 0;
  for (let rise = Math.max(a.rise, b.rise); rise > -5; rise--) {
    for (let column = 0; column < Math.max(a.columns, b.columns); column++) {
      if (knotAt(a, rise, column) !== knotAt(b, rise, column)) count++;
    }
  }
  return count;
}

function knotAt(glyph: Glyph, rise: number, column: number): boolean {
  return glyph.rows[glyph.rise - rise]?.[column] === '#';
}

/** Whether a drawing holds all knots of another at the same height, moved sideways at most. */
function holds(whole: Glyph, part: Glyph): boolean {
  const shifts = Array.from({ length: whole.columns - part.columns + 1 }, (_, i) => i);
  return shifts.some((shift) =>
    part.rows.every((row, r) =>
      [...row].every((knot, c) => knot === '.' || knotAt(whole, part.rise - r, c + shift)),
    ),
  );
}
