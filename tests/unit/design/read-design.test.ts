import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { chartHash, chartJson } from '../../../shared/chart/chart-json.ts';
import { readDesign, readDesignBytes } from '../../../shared/design/read-design.ts';
import { DESIGN_VERSION } from '../../../shared/design/schema.ts';
import { fieldWords } from '../../../shared/design/schema-fault.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters, lettersOf } from '../../notation.ts';

type Json = Record<string, unknown>;

const examples = new URL('../../examples/', import.meta.url);
const reference = {
  name: 'harbour.png',
  mediaType: 'image/png',
  picture: ['AAAA'],
  opacity: 0.5,
  leftMm: -12,
  topMm: 0,
  widthMm: 90,
  heightMm: 120.5,
  visible: true,
};
const text = writeDesign(designFromLetters(['aab', 'b.-']));

/** The file with some of its top-level values changed. */
function changed(change: Json): string {
  return JSON.stringify({ ...(JSON.parse(text) as Json), ...change });
}

function withRows(...rows: unknown[]): string {
  const [layer] = (JSON.parse(text) as { layers: Json[] }).layers;
  return changed({ layers: [{ ...layer, rows }] });
}

function withYarns(...changes: Json[]): string {
  const { yarns } = JSON.parse(text) as { yarns: Json[] };
  return changed({ yarns: yarns.map((yarn, i) => ({ ...yarn, ...changes[i] })) });
}

function withReference(change: Json): string {
  return changed({ reference: { ...reference, ...change } });
}

function refusal(file: string | Uint8Array): string {
  const read = typeof file === 'string' ? readDesign(file) : readDesignBytes(file);
  if (read.ok) throw new Error('the file was opened');
  return `${read.problem.code}: ${read.problem.sentence}`;
}

const older = 'Open an older copy of it, or ask for it again.';

describe('a stored design of every version that was ever published', () => {
  /** By file: SHA-256 of the chart as `chart --json` gives it, noted when the example was stored. */
  const charts: Record<string, string> = {
    'v1/by-hand.larkrow': '0fb7cdfca96f31defe3af79f4fbb23e50d87d10427db6ee8d45dc35e4d6ac2da',
    'v1/everything.larkrow': 'bc66bcadc236441704c5401816b282c8542ea3181b94cb4b82eb2be16c4665d8',
    'v1/plain.larkrow': '5252583a3ecf38022e2982769a88515771bc34e9a27bad740e0c599908dda60c',
    'v2/all-told.larkrow': 'bc66bcadc236441704c5401816b282c8542ea3181b94cb4b82eb2be16c4665d8',
    'v2/by-hand.larkrow': '0fb7cdfca96f31defe3af79f4fbb23e50d87d10427db6ee8d45dc35e4d6ac2da',
    'v2/editions-told.larkrow': 'bc66bcadc236441704c5401816b282c8542ea3181b94cb4b82eb2be16c4665d8',
    'v2/editions.larkrow': 'bc66bcadc236441704c5401816b282c8542ea3181b94cb4b82eb2be16c4665d8',
    'v2/everything.larkrow': 'bc66bcadc236441704c5401816b282c8542ea3181b94cb4b82eb2be16c4665d8',
    'v2/gauge-told.larkrow': 'bc66bcadc236441704c5401816b282c8542ea3181b94cb4b82eb2be16c4665d8',
    'v2/plain.larkrow': '5252583a3ecf38022e2982769a88515771bc34e9a27bad740e0c599908dda60c',
  };

  it.each(Object.entries(charts))('%s opens with the chart it always had', (file, hash) => {
    const read = readDesignBytes(readFileSync(new URL(file, examples)));
    if (!read.ok) throw new Error(read.problem.sentence);
    expect(chartHash(chartJson(read.value, flatten(read.value)))).toBe(hash);
  });

  it('stands in the table above, each of them', () => {
    const stored = readdirSync(examples, { recursive: true }).map((name) =>
      String(name).replaceAll('\\', '/'),
    );
    expect(stored.filter((name) => name.endsWith('.larkrow')).sort()).toEqual(Object.keys(charts));
  });

  it.each([
    'v2/plain.larkrow',
    'v2/everything.larkrow',
    'v2/all-told.larkrow',
    'v2/editions.larkrow',
    'v2/editions-told.larkrow',
    'v2/gauge-told.larkrow',
  ])('%s is in canonical form', (file) => {
    const stored = readFileSync(new URL(file, examples), 'utf8');
    const read = readDesign(stored);
    expect(read.ok && writeDesign(read.value)).toBe(stored);
  });

  it('has among those of our version one that tells each key of ours, those that may be left out included', () => {
    const stored = Object.keys(charts)
      .filter((file) => file.startsWith(`v${DESIGN_VERSION}/`))
      .map((file): unknown => JSON.parse(readFileSync(new URL(file, examples), 'utf8')));
    const told = new Set(stored.flatMap((file) => pathsIn(file)));
    // Where this fails, store one more example that tells the new key.
    const missing = Object.keys(fieldWords).filter((path) => path !== '' && !told.has(path));
    expect(missing).toEqual([]);
  });

  it('keeps the keys that another program put in, on every level', () => {
    const read = readDesign(readFileSync(new URL('v1/by-hand.larkrow', examples), 'utf8'));
    const again = JSON.parse(read.ok ? writeDesign(read.value) : '') as {
      madeWith: unknown;
      cord: Json;
      yarns: Json[];
      layers: Json[];
    };
    expect(again.madeWith).toEqual({ program: 'a text editor', tries: [1, 2, 3] });
    expect(again.cord.ply).toBe(3);
    expect(again.yarns[0]!.shop).toBe('round the corner');
    expect(again.layers[0]!.opacity).toBe(0.5);
  });
});

/** Paths to all values in a file, with `*` for any place in a list. */
function pathsIn(value: unknown, path: readonly string[] = []): string[] {
  const own = path.length > 0 ? [path.join('.')] : [];
  if (typeof value !== 'object' || value === null) return own;
  const members = Array.isArray(value)
    ? value.map((each): [string, unknown] => ['*', each])
    : Object.entries(value);
  return [...own, ...members.flatMap(([key, each]) => pathsIn(each, [...path, key]))];
}

describe('what is no design', () => {
  const no =
    'not-a-design: There is no Larkrow design in this file, whatever its name says. Choose one that was saved by Larkrow.';

  it.each([
    ['a letter to the yarn shop', 'Dear yarn shop, I need 12 skeins.'],
    ['a list', '[1, 2]'],
    ['a number', '12'],
    ['nothing at all', 'null'],
    ['some other JSON', '{"format": "larkrow-chart", "version": 1}'],
    ['JSON of no format', '{}'],
    ['JSON that breaks off', '{"a": '],
  ])('%s is refused as such', (_, file) => {
    expect(refusal(file)).toBe(no);
  });

  it('a picture or a PDF is refused as such', () => {
    expect(refusal(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))).toBe(no);
    expect(refusal(Uint8Array.from([0x25, 0x50, 0x44, 0x46, 0x2d, 0xe2, 0xe3, 0xcf]))).toBe(no);
  });

  it.each(['', ' \n', '\uFEFF'])('an empty file is called empty', (file) => {
    expect(refusal(file)).toBe('not-a-design: The file is empty. Open an older copy of it.');
  });
});

describe('a newer design', () => {
  it('is not opened; the sentence names both versions', () => {
    expect(refusal(changed({ version: 3, layers: 'quite another thing' }))).toBe(
      'newer-version: The file was saved by a newer Larkrow: it has version 3, and this Larkrow reads up to version 2. Update Larkrow to open it.',
    );
  });

  it.each([0, -1])('that says version %i never was', (version) => {
    expect(refusal(changed({ version }))).toContain(`there never was a version ${version} of designs`);
  });

  it.each(['1', 1.5, null, undefined])('that says version %s says none', (version) => {
    expect(refusal(changed({ version }))).toContain('it does not say of which version it is');
  });
});

describe('a damaged design', () => {
  it.each([
    [
      'a row that is too short',
      withRows('2y1 1y2', '1y2 1.'),
      'layer “Picture”, row 2 has 2 cells instead of 3',
    ],
    [
      'a row that is too long',
      withRows('2y1 2y2', '1y2 1. 1-'),
      'layer “Picture”, row 1 has 4 cells instead of 3',
    ],
    ['a row too few', withRows('2y1 1y2'), 'layer “Picture” has 1 row instead of 2'],
    ['a row that is a number', withRows('2y1 1y2', 7), 'row 2 of layer 1 “Picture” must be a text'],
    [
      'a yarn without a name',
      withYarns({}, { name: '' }),
      'the name of yarn 2 must be a text of 1 to 200 characters',
    ],
    [
      'a colour of a wrong form',
      withYarns({ color: 'red' }),
      'the colour of yarn 1 “Linen” must be written like #5b7f4f, in lower case',
    ],
    [
      'two yarns of one id',
      withYarns({}, {}, { id: 'y1' }),
      'the yarns “Linen” and “Tide” have the same id, y1',
    ],
    [
      'two yarns of one symbol',
      withYarns({}, { symbol: 'a' }),
      'the yarns “Linen” and “Dusk” have the same symbol, a',
    ],
    ['a ground of no yarn', changed({ ground: 'y9' }), 'the ground yarn y9 is not in the list of yarns'],
    ['no cord', changed({ cord: undefined }), 'the cord is missing'],
    ['a cord without thickness', changed({ cord: { name: 'Rope' } }), "the cord's thickness is missing"],
    [
      'a width of nothing',
      changed({ columns: 0 }),
      'the number of cords must be a whole number from 1 to 1000',
    ],
    ['no yarns', changed({ yarns: [] }), 'the list of yarns must be a list of at least one yarn'],
    [
      'a fringe drawn by hand of no lengths',
      changed({ fringe: { shape: 'by-hand', longMm: 10, shortMm: 0 } }),
      'the fringe is drawn by hand, but the lengths of its cords are missing',
    ],
    [
      'a cord of the fringe that is no length',
      changed({ fringe: { shape: 'by-hand', longMm: 10, shortMm: 0, byHandMm: [10, -1, 0] } }),
      'the fringe of cord 2 must be a number of mm from 0 to 100000',
    ],
    [
      'a pin of no known kind',
      changed({ pins: [{ kind: 'knit', row: 1, cord: 1 }] }),
      'the kind of pin 1 must be cut, no-carry or carry',
    ],
    [
      'a pin beyond every chart',
      changed({ pins: [{ kind: 'cut', row: 1, cord: 1001 }] }),
      'the cord of pin 1 must be a whole number from 1 to 1000',
    ],
    [
      'a pin to carry to nowhere',
      changed({ pins: [{ kind: 'carry', row: 1, cord: 1, toRow: 2 }] }),
      'pin 1 does not say where the strand is carried to',
    ],
    [
      'a pin to cut that leads on',
      changed({ pins: [{ kind: 'cut', row: 1, cord: 1, toRow: 2, toCord: 1 }] }),
      'pin 1 leads on to another cell, but is no carry',
    ],
    [
      'a picture of no known kind',
      withReference({ mediaType: 'image/gif' }),
      'the kind of the reference picture must be image/png, image/jpeg or image/webp',
    ],
    [
      'a picture of other letters than base64',
      withReference({ picture: ['AAAA', 'A-A='] }),
      'line 2 of the reference picture must be a line of base64, at most 60000 characters',
    ],
    [
      'a picture that lost a letter',
      withReference({ picture: ['AAA', 'AAAA'] }),
      'line 1 of the reference picture is not whole base64',
    ],
    [
      'a picture that ends before its last line',
      withReference({ picture: ['AAAA', 'AA==', 'AAAA'] }),
      'line 2 of the reference picture is not whole base64',
    ],
    [
      'a price below nothing',
      withYarns({ price: -1 }),
      'the price of a skein of yarn 1 “Linen” must be a number from 0 to 1000000',
    ],
  ])('with %s is refused, and told where', (_, file, what) => {
    expect(refusal(file)).toBe(`damaged: The file is damaged: ${what}. ${older}`);
  });

  it('that lost its end is told from one whose text is garbled', () => {
    expect(refusal(text.slice(0, -40))).toContain('its text breaks off before the end');
    expect(refusal(text.replace('"columns"', 'columns'))).toContain('its text is garbled');
  });

  it('with bytes that are no UTF-8 is told from a file of another kind', () => {
    const bytes = new TextEncoder().encode(text);
    bytes[60] = 0xff;
    expect(refusal(bytes)).toContain('some of its bytes are not text (UTF-8)');
  });

  it('shows names on one line and not at full length', () => {
    const [layer] = (JSON.parse(text) as { layers: Json[] }).layers;
    const name = `Line one\nline two ${'x'.repeat(100)}`;
    const sentence = refusal(changed({ layers: [{ ...layer, name, rows: ['2y1', '3.'] }] }));
    expect(sentence).toContain(`“Line one�line two ${'x'.repeat(21)}…”, row 1`);
  });
});

describe('keys that could be taken for prototypes', () => {
  it('are dropped where they are called __proto__, at every level, and change no object', () => {
    const hostile = text
      .replace('{', '{"__proto__": {"polluted": true},')
      .replace('"cord": {', '"cord": {"\\u005f_proto__": {"polluted": true},')
      .replace(
        '"layers": [\n    {',
        '"x": [{"__proto__": null}], "layers": [\n    {"__proto__": {"rows": []},',
      );
    const read = readDesign(hostile);
    if (!read.ok) throw new Error(read.problem.sentence);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
    expect('polluted' in read.value).toBe(false);
    expect('polluted' in read.value.cord).toBe(false);
    expect(writeDesign(read.value)).not.toContain('__proto__');
    expect(lettersOf(read.value)).toEqual(['aab', 'b.-']);
  });

  it('are kept as plain data where they are called anything else', () => {
    const read = readDesign(changed({ constructor: { prototype: { a: 1 } }, toString: 'x' }));
    const again = read.ok ? writeDesign(read.value) : '';
    expect(JSON.parse(again)).toMatchObject({ constructor: { prototype: { a: 1 } }, toString: 'x' });
  });
});
