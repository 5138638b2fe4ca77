/** Each cap of the design file, at the cap and one above it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { defaults } from '../../../shared/design/defaults.ts';
import { limits } from '../../../shared/design/limits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { readDesign, readDesignBytes } from '../../../shared/design/read-design.ts';
import type { DesignFile } from '../../../shared/design/schema.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters } from '../../notation.ts';

const text = writeDesign(designFromLetters(['ab']));
const file = JSON.parse(text) as DesignFile;

/** 'opened', or the code of the problem. */
function outcome(given: object | string): string {
  const read = readDesign(typeof given === 'string' ? given : JSON.stringify(given));
  return read.ok ? 'opened' : read.problem.code;
}

function sized(columns: number, rows: number, layers = 1): DesignFile {
  const sheet = file.layers[0]!;
  return {
    ...file,
    columns,
    rows,
    layers: Array.from({ length: layers }, (_, i) => ({
      ...sheet,
      id: `sheet-${i}`,
      rows: Array<string>(rows).fill(`${columns}y1`),
    })),
  };
}

describe('a design file', () => {
  it(`has at most ${limits.columns} cords`, () => {
    expect(outcome(sized(limits.columns, 1))).toBe('opened');
    expect(outcome(sized(limits.columns + 1, 1))).toBe('too-large');
  });

  it(`has at most ${limits.rows} rows`, () => {
    expect(outcome(sized(1, limits.rows))).toBe('opened');
    expect(outcome(sized(1, limits.rows + 1))).toBe('too-large');
  });

  it(`has no layer of more than ${limits.rows} rows`, () => {
    const rows = Array<string>(limits.rows + 1).fill('2y1');
    expect(outcome({ ...file, layers: [{ ...file.layers[0], rows }] })).toBe('too-large');
  });

  it(`has at most ${limits.layers} layers`, () => {
    expect(outcome(sized(1, 1, limits.layers))).toBe('opened');
    expect(outcome(sized(1, 1, limits.layers + 1))).toBe('too-large');
  });

  it(`has at most ${limits.cells} cells in all layers together`, () => {
    expect(limits.columns * limits.rows * 8).toBe(limits.cells);
    expect(outcome(sized(limits.columns, limits.rows, 8))).toBe('opened');
    const [columns, rows, layers] = leastAbove(limits.cells);
    expect(columns * rows * layers - limits.cells).toBeLessThan(20);
    expect(outcome(sized(columns, rows, layers))).toBe('too-large');
  });

  it(`has at most ${limits.yarns} yarns`, () => {
    const symbols = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&'];
    const yarns = symbols.map((symbol, i) => ({ ...defaults.yarns[0]!, id: `y${i + 1}`, symbol }));
    expect(yarns).toHaveLength(limits.yarns);
    expect(outcome({ ...file, yarns })).toBe('opened');
    expect(outcome({ ...file, yarns: [...yarns, yarns[0]] })).toBe('too-large');
  });

  it(`has at most ${limits.swatches} swatches`, () => {
    const swatch = { widthMm: 100, cords: 20, heightMm: 100, rows: 21 };
    const swatches = Array(limits.swatches).fill(swatch);
    expect(outcome({ ...file, swatches })).toBe('opened');
    expect(outcome({ ...file, swatches: [...swatches, swatch] })).toBe('too-large');
  });

  it(`has at most ${limits.pins} pins`, () => {
    const pins = Array(limits.pins).fill({ kind: 'cut', row: 1, cord: 1 });
    expect(outcome({ ...file, pins })).toBe('opened');
    expect(outcome({ ...file, pins: [...pins, pins[0]] })).toBe('too-large');
  });

  it(`has at most ${limits.cutBundles} bundles that are cut`, () => {
    const cut = Array(limits.cutBundles).fill({ yarn: 'y1', cutMm: 1524, pieces: 3 });
    expect(outcome({ ...file, bundles: { cut } })).toBe('opened');
    expect(outcome({ ...file, bundles: { cut: [...cut, cut[0]] } })).toBe('too-large');
  });

  it(`has at most ${limits.fileBytes} bytes, in characters of one byte or of several`, () => {
    const bytes = new TextEncoder().encode(text).length;
    expect(outcome(text + ' '.repeat(limits.fileBytes - bytes))).toBe('opened');
    expect(outcome(text + ' '.repeat(limits.fileBytes - bytes + 1))).toBe('too-large');
    // A letter of two bytes and a sign of four in the notes, whose own two quotes are there already.
    const wide = text.replace('"notes": ""', '"notes": "ä🧶"');
    expect(outcome(wide + ' '.repeat(limits.fileBytes - bytes - 6))).toBe('opened');
    expect(outcome(wide + ' '.repeat(limits.fileBytes - bytes - 5))).toBe('too-large');
  }, 60_000);

  it(`is not even decoded where it has more than ${limits.fileBytes} bytes`, () => {
    const padded = new Uint8Array(limits.fileBytes + 1).fill(0x20);
    padded.set(new TextEncoder().encode(text));
    expect(readDesignBytes(padded.subarray(0, limits.fileBytes)).ok).toBe(true);
    const above = readDesignBytes(padded);
    expect(above.ok ? 'opened' : above.problem.code).toBe('too-large');
  }, 60_000);

  it(`nests at most ${limits.fileDepth} levels deep, and brackets in a text are none`, () => {
    const nested = (levels: number) =>
      text.replace('{', `{"deep": ${'['.repeat(levels)}${']'.repeat(levels)},`);
    expect(outcome(nested(limits.fileDepth - 1))).toBe('opened');
    expect(outcome(nested(limits.fileDepth))).toBe('too-large');
    expect(outcome({ ...file, notes: `"${'['.repeat(200)}\\` })).toBe('opened');
  });

  it(`holds at most ${limits.fileValues} values`, () => {
    const holding = (values: number) => text.replace('{', `{"many": [${'0,'.repeat(values)}0],`);
    const own = [...text.replace(/"(\\.|[^"\\])*"/g, '').matchAll(/[,:[{]/g)].length;
    const many = 3; // The colon, the bracket and the comma around the list.
    expect(outcome(holding(limits.fileValues - own - many))).toBe('opened');
    expect(outcome(holding(limits.fileValues - own - many + 1))).toBe('too-large');
  });

  it(`holds no text of more than ${limits.stringChars} characters, however they are written`, () => {
    const filled = (count: number) => text.replace('"notes": ""', `"notes": "${'\\u00e4'.repeat(count)}"`);
    expect(outcome(filled(limits.stringChars))).toBe('opened');
    expect(outcome(filled(limits.stringChars + 1))).toBe('too-large');
    expect(outcome({ ...file, ['k'.repeat(limits.stringChars)]: 1 })).toBe('opened');
    expect(outcome({ ...file, ['k'.repeat(limits.stringChars + 1)]: 1 })).toBe('too-large');
  });

  const reference = (picture: string[]) => ({
    ...file,
    reference: {
      name: 'bay.png',
      mediaType: 'image/png',
      picture,
      opacity: 1,
      leftMm: 0,
      topMm: 0,
      widthMm: 10,
      heightMm: 10,
      visible: true,
    },
  });

  it(`has a fringe of at most ${limits.columns} lengths drawn by hand`, () => {
    const drawn = (count: number) => ({
      ...file,
      fringe: { shape: 'by-hand', longMm: 9, shortMm: 9, byHandMm: Array<number>(count).fill(9) },
    });
    expect(outcome(drawn(limits.columns))).toBe('opened');
    expect(outcome(drawn(limits.columns + 1))).toBe('too-large');
  });

  it(`has a picture of at most ${limits.referenceBytes} bytes under its chart`, () => {
    const base64 = (bytes: number) =>
      Buffer.alloc(bytes, 7)
        .toString('base64')
        .match(new RegExp(`.{1,${limits.referenceLineChars}}`, 'g'))!;
    expect(outcome(reference(base64(limits.referenceBytes)))).toBe('opened');
    expect(outcome(reference(base64(limits.referenceBytes + 1)))).toBe('damaged');
  });

  it(`has that picture in at most ${limits.referenceLines} lines of at most ${limits.referenceLineChars} characters`, () => {
    expect(outcome(reference(Array<string>(limits.referenceLines).fill('AAAA')))).toBe('opened');
    expect(outcome(reference(Array<string>(limits.referenceLines + 1).fill('AAAA')))).toBe('too-large');
    expect(outcome(reference(['A'.repeat(limits.referenceLineChars)]))).toBe('opened');
    expect(outcome(reference(['A'.repeat(limits.referenceLineChars + 4)]))).toBe('damaged');
  });

  it('has photographs of covers, its own and those of its editions, within the same', () => {
    const told = readFileSync(new URL('../../examples/v2/editions-told.larkrow', import.meta.url), 'utf8');
    const withCovers = (picture: readonly string[]) => {
      const design = JSON.parse(told) as DesignFile;
      const own = structuredClone(design);
      own.pattern!.cover!.picture = [...picture];
      design.editions![0]!.made.pattern!.cover!.picture = [...picture];
      return [outcome(own), outcome(design)];
    };
    const lines = (count: number) => Array<string>(count).fill('AAAA');
    expect(withCovers(lines(limits.referenceLines))).toEqual(['opened', 'opened']);
    expect(withCovers(lines(limits.referenceLines + 1))).toEqual(['too-large', 'too-large']);
    expect(withCovers(['AAA'])).toEqual(['damaged', 'damaged']);
    const large = Array<string>(100).fill('A'.repeat(limits.referenceLineChars));
    expect(withCovers(large)).toEqual(['damaged', 'damaged']);
  });

  it(`holds no name of more than ${limits.nameChars} characters`, () => {
    expect(outcome({ ...file, title: 'x'.repeat(limits.nameChars) })).toBe('opened');
    expect(outcome({ ...file, title: 'x'.repeat(limits.nameChars + 1) })).toBe('damaged');
  });
});

describe('the heaviest chart that a design can hold', () => {
  it('is written to a file that opens again', () => {
    const { columns, rows } = limits;
    const row = Uint8Array.from({ length: columns }, (_, c) => 63 + (c % 2));
    const yarns = [63, 64].map((code, i) => ({ ...defaults.yarns[i]!, id: `y${code}` as const }));
    const design = newDesign({ title: 'Speckled', columns, rows, yarns });
    const layers = Array.from({ length: 8 }, (_, i) => ({
      ...design.layers[0]!,
      id: `sheet-${i}`,
      rows: Array<Uint8Array>(rows).fill(row),
    }));
    const heavy = writeDesign({ ...design, layers });
    expect(heavy.length).toBeGreaterThan(79_000_000);
    const read = readDesign(heavy);
    expect(read.ok && read.value.layers[7]!.rows[rows - 1]).toEqual(row);
  }, 60_000);
});

describe('a new design', () => {
  it('is made up to the caps and not beyond them', () => {
    expect(newDesign({ title: 'x', columns: limits.columns, rows: limits.rows }).columns).toBe(
      limits.columns,
    );
    expect(() => newDesign({ title: 'x', columns: limits.columns + 1, rows: 1 })).toThrow('1001 cords');
    expect(() => newDesign({ title: 'x', columns: 1, rows: limits.rows + 1 })).toThrow('2001 rows');
    expect(() => newDesign({ title: 'x', columns: 0, rows: 1 })).toThrow('at least one cord');
  });
});

/** Columns, rows and layers within their caps whose product is the least above `cells`. */
function leastAbove(cells: number): [columns: number, rows: number, layers: number] {
  let least: [number, number, number] = [limits.columns, limits.rows, limits.layers];
  for (let layers = 1; layers <= limits.layers; layers++) {
    for (let columns = 1; columns <= limits.columns; columns++) {
      const rows = Math.floor(cells / (columns * layers)) + 1;
      if (rows > limits.rows) continue;
      if (columns * rows * layers < least[0] * least[1] * least[2]) least = [columns, rows, layers];
    }
  }
  return least;
}
