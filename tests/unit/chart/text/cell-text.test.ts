import { describe, expect, it } from 'vitest';
import { alphabets, type CellText, cellText } from '../../../../shared/chart/text/cell-text.ts';
import { limits } from '../../../../shared/design/limits.ts';

/** A text as a picture, without the empty rows above and below. */
function pictureOf({ columns, rows, cells }: CellText): string[] {
  const drawn = Array.from({ length: rows }, (_, r) =>
    Array.from(cells.subarray(r * columns, (r + 1) * columns), (cell) => '.#'[cell]).join(''),
  );
  const first = drawn.findIndex((row) => row.includes('#'));
  return drawn.slice(first, drawn.findLastIndex((row) => row.includes('#')) + 1);
}

/** The rows (from 0) in which upright strokes in the first column begin. */
function stemsOf({ columns, rows, cells }: CellText): number[] {
  const stem = Array.from({ length: rows }, (_, r) => cells[r * columns] === 1);
  return stem.flatMap((knot, r) => (knot && !stem[r - 1] ? [r] : []));
}

const ids = alphabets.map(({ id }) => id);
const [small, tall] = alphabets as [(typeof alphabets)[number], (typeof alphabets)[number]];

describe('a word in cells', () => {
  it('is drawn in small letters', () => {
    expect(pictureOf(cellText('Larkrow', 'small'))).toEqual([
      '............#................',
      '#...........#................',
      '#....##.#.#.#.#.#.#..#..#...#',
      '#...#.#.##..##..##..#.#.#.#.#',
      '#...#.#.#...##..#...#.#.#.#.#',
      '###..##.#...#.#.#....#...#.#.',
    ]);
  });

  it('is drawn in small letters with accents and strokes', () => {
    expect(pictureOf(cellText('Łódź 8', 'small'))).toEqual([
      '.......#.......#.........',
      '......#....#..#..........',
      '.#.........#..........##.',
      '.##...#...##.####....#..#',
      '##...#.#.#.#...#......##.',
      '.#...#.#.#.#..#......#..#',
      '.###..#...##.####.....##.',
    ]);
  });

  it('is drawn in tall letters', () => {
    expect(pictureOf(cellText('Bay', 'tall'))).toEqual([
      '######.................',
      '##...##................',
      '##...##................',
      '##...##...####...##..##',
      '######.......##..##..##',
      '##...##...#####..##..##',
      '##...##..##..##..##..##',
      '##...##..##..##..##..##',
      '######....#####...#####',
      '.....................##',
      '.................##..##',
      '..................####.',
    ]);
  });

  it.each(ids)('is as wide as its letters and the gaps between them (%s)', (id) => {
    const word = 'Lamp at Harrow Point 1987';
    const widthOf = (letter: string) => cellText(letter, id).columns;
    const letters = [...word].reduce((sum, letter) => sum + widthOf(letter), 0);
    const { letterGap } = alphabets.find((alphabet) => alphabet.id === id)!;
    expect(cellText(word, id).columns).toBe(letters + (word.length - 1) * letterGap);
    expect(cellText(word, id, { letterGap: 4 }).columns).toBe(letters + (word.length - 1) * 4);
  });

  it.each(alphabets)(
    'stands on one baseline with accents and without, in a line of its own ($label)',
    (alphabet) => {
      const room = alphabet.lineRows;
      for (const word of ['a', 'A', 'Ž', 'ğ', 'g', '']) expect(cellText(word, alphabet.id).rows).toBe(room);
      expect(stemsOf(cellText('EÉğ', alphabet.id))).toEqual(stemsOf(cellText('E', alphabet.id)));
      expect(pictureOf(cellText('É', alphabet.id)).length).toBeGreaterThan(alphabet.capRows + 1);
    },
  );

  it('reads the same however its accents are spelt', () => {
    for (const word of ['Žluťoučký kůň', 'Ñandú', 'façade', 'Ålesund']) {
      expect(cellText(word.normalize('NFD'), 'small')).toEqual(cellText(word.normalize('NFC'), 'small'));
    }
  });

  it('takes the curly quotes and wide spaces of a word processor', () => {
    expect(cellText('‘a’ “b”\u00a0−', 'tall')).toEqual(cellText('\'a\' "b" –', 'tall'));
  });
});

describe('several lines', () => {
  it('stand one under the other, as near as their letters allow', () => {
    const capitals = cellText('HI\nHI', 'small');
    const hanging = cellText('Hg\nHI', 'small');
    const accented = cellText('HI\nHÍ', 'small');
    expect(capitals.rows - small.lineRows).toBe(small.capRows + small.lineGap);
    expect(hanging.rows - capitals.rows).toBe(2);
    expect(accented.rows - capitals.rows).toBe(3);
  });

  it('keep one distance through the whole text', () => {
    const text = cellText('H\np\nH\nÉ\nH', 'tall');
    const [first, , third, , fifth] = stemsOf(text);
    expect(third! - first!).toBe((text.rows - tall.lineRows) / 2);
    expect(fifth! - third!).toBe((text.rows - tall.lineRows) / 2);
  });

  it('keep the rows between them that are asked for', () => {
    const near = cellText('H\nH', 'tall', { lineGap: 1 });
    const far = cellText('H\nH', 'tall', { lineGap: 7 });
    expect(far.rows - near.rows).toBe(6);
    expect(near.rows - tall.lineRows).toBe(tall.capRows + 1);
  });

  it('are set to the left, to the middle or to the right', () => {
    const first = (align: 'start' | 'middle' | 'end') =>
      pictureOf(cellText('HHH\nI', 'small', { align })).at(-1);
    expect(first('start')).toBe('###...........');
    expect(first('middle')).toBe('.....###......');
    expect(first('end')).toBe('...........###');
  });

  it('may be empty, and may be parted as on another platform', () => {
    expect(cellText('', 'small')).toEqual({
      columns: 0,
      rows: small.lineRows,
      cells: new Uint8Array(0),
      missing: [],
    });
    expect(cellText('a\r\nb', 'small')).toEqual(cellText('a\nb', 'small'));
    expect(cellText('H\n\nH', 'small').rows).toBe(cellText('H\nH\nH', 'small').rows);
  });
});

describe('a character that the alphabet lacks', () => {
  it('shows as an open box and is named once', () => {
    const text = cellText('字a字語', 'small');
    expect(text.missing).toEqual(['字', '語']);
    expect(pictureOf(cellText('字', 'small'))).toEqual(['####', '#..#', '#..#', '#..#', '####']);
  });

  it('is named with its accents, also where only the room for them is missing', () => {
    expect(cellText('x\u0335', 'small').missing).toEqual(['x\u0335']);
    expect(cellText('g\u0327\u0328 \u0301', 'tall').missing).toContain(' \u0301');
    expect(cellText('👍🏽', 'tall').missing).toEqual(['👍', '🏽']);
  });
});

it(`a text has at most ${limits.textChars} characters`, () => {
  const longest = 'M'.repeat(limits.textChars);
  expect(cellText(longest, 'small').columns).toBe(limits.textChars * 6 - 1);
  expect(() => cellText(`${longest}M`, 'small')).toThrow(RangeError);
});
