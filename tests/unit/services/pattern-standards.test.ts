/** Patterns read back against PDF/A and PDF/UA: what they say of themselves is so. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { writePatternPdf } from '../../../app/services/pattern/draw-pdf.ts';
import { makeLabels } from '../../../app/services/pattern/make-labels.ts';
import { makePattern } from '../../../app/services/pattern/make-pattern.ts';
import type { Design } from '../../../shared/design/design.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { patternParts } from '../../../shared/design/pattern-schema.ts';
import type { Copy } from '../../../shared/pattern/copy.ts';
import { emptyImprint, type Imprint } from '../../../shared/pattern/imprint.ts';
import type { Item, PatternDocument, TextItem } from '../../../shared/pattern/page/page.ts';
import { designFromLetters } from '../../notation.ts';
import { pdfAFaults } from '../../pdf/pdf-a-faults.ts';
import { pdfUaFaults, saysUa } from '../../pdf/pdf-ua-faults.ts';
import { unpacked } from '../../pdf/unpacked.ts';

/** A program of Debian's, tried where it is there. */
const QPDF = 'qpdf';
const date = new Date('2026-03-01T12:00:00Z');
const options = { paper: 'a4', units: 'both', date } as const;

async function patternOf(design: Design, attachDesign = false): Promise<Uint8Array> {
  const made = await makePattern(design, { ...options, attachDesign });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value.bytes;
}

/** A copy that is as unlike the usual one as can be. */
async function wholePattern(): Promise<Uint8Array> {
  const mark = await sharp({ create: { width: 9, height: 9, channels: 4, background: '#28455f80' } })
    .png()
    .toBuffer();
  const of: Design = { ...design, pattern: { parts: [...patternParts] } };
  const copy: Copy = {
    language: 'de',
    ink: 'grey',
    cells: 'large',
    rowsForm: 'compact',
    rowsBeside: true,
    leftHanded: true,
    preparedFor: 'Frau Ötzkan',
  };
  const imprint: Imprint = {
    ...emptyImprint,
    name: 'Ines Marlow',
    workshop: 'Seven Knots',
    contact: ['ines@example.org', 'https://example.org/knots'],
    about: 'Knots since the tide came in.',
    mark: { mediaType: 'image/png', base64: mark.toString('base64') },
  };
  const made = await makePattern(of, { ...options, copy, imprint });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value.bytes;
}

async function labelsOf(design: Design): Promise<Uint8Array> {
  const made = await makeLabels(design, { ...options, fitted: true });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value.bytes;
}

const letters = ['aaaaaaaabbaaaaaa', 'aaaaaaabbbbaaaaa', 'aaaacccbbbbaaaaa', 'aaa--ccccccccaaa'];
const design = designFromLetters(letters, { title: 'Tern & “Holm” <Ψ>', designer: 'Ines Marlow' });

const documents: readonly (readonly [string, () => Promise<Uint8Array>])[] = [
  ['a pattern', () => patternOf(design)],
  ['a pattern that carries its design', () => patternOf(design, true)],
  ['a pattern of many pages', () => patternOf(newDesign({ title: 'Large', columns: 120, rows: 140 }))],
  [
    'a pattern that begins with its chart',
    () => patternOf({ ...design, pattern: { parts: ['chart', 'materials'] } }),
  ],
  ['a pattern with every part, in German and large, with a mark', () => wholePattern()],
  ['a pattern of one knot', () => patternOf(designFromLetters(['a']))],
  ['a pattern without a knot', () => patternOf(designFromLetters(['---', '---']))],
  ['the labels of bundles', () => labelsOf(design)],
  ['a page with pictures and links', () => written(everyItem)],
];

const text = (y: number, words: string, more: Partial<TextItem> = {}): TextItem => ({
  kind: 'text',
  x: 10,
  y,
  text: words,
  face: 'serif',
  sizeMm: 4,
  color: '#26231f',
  align: 'left',
  ...more,
});

let everyItem: readonly Item[] = [];

beforeAll(async () => {
  const glass = sharp({ create: { width: 40, height: 30, channels: 4, background: '#28455f80' } });
  const cloth = sharp({ create: { width: 40, height: 30, channels: 3, background: '#9e3329' } });
  const box = { x: 10, width: 20, height: 15 };
  const png = new Uint8Array(await glass.png().toBuffer());
  const jpeg = new Uint8Array(await cloth.clone().jpeg().toBuffer());
  const grey = new Uint8Array(await cloth.clone().greyscale().jpeg().toBuffer());
  everyItem = [
    text(10, 'Pictures and links', { role: 'title' }),
    { kind: 'image', ...box, y: 20, mediaType: 'image/png', bytes: png, alt: 'A pane of glass' },
    { kind: 'image', ...box, y: 40, mediaType: 'image/jpeg', bytes: jpeg, alt: 'A red cloth' },
    { kind: 'image', ...box, y: 60, mediaType: 'image/jpeg', bytes: grey, alt: '' },
    text(80, 'See', { role: 'paragraph' }),
    text(85, 'the next page', { link: 2 }),
    text(90, 'and come back.'),
  ];
});

async function written(items: readonly Item[], more: Partial<PatternDocument> = {}): Promise<Uint8Array> {
  const page = { widthMm: 100, heightMm: 100, items: [...items] };
  const pages = [
    { ...page, title: 'One' },
    { ...page, title: 'Two' },
  ];
  const document: PatternDocument = {
    title: 'Items',
    author: '',
    language: 'en',
    pages,
    notices: [],
    ...more,
  };
  const bytes = await writePatternPdf(document, { date });
  if (!bytes) throw new Error('nobody cancelled');
  return bytes;
}

const hasQpdf = !spawnSync(QPDF, ['--version']).error;

describe.each(documents)('%s', (_, make) => {
  it('follows PDF/A, and PDF/UA, which it says', { timeout: 30_000 }, async () => {
    const bytes = await make();
    expect(pdfAFaults(bytes)).toEqual([]);
    expect(pdfUaFaults(bytes)).toEqual([]);
    expect(saysUa(bytes)).toBe(true);
  });

  // Another program's eyes, where it is installed.
  if (hasQpdf)
    it('is clean to qpdf', { timeout: 30_000 }, async () => {
      const path = join(mkdtempSync(join(tmpdir(), 'larkrow-')), 'pattern.pdf');
      writeFileSync(path, await make());
      // It ends with 2 where it finds an error, with 3 where it warns.
      expect(execFileSync(QPDF, ['--check', path]).toString()).toContain(
        'No syntax or stream encoding errors',
      );
    });
});

describe('a document that does not follow PDF/UA', () => {
  const title = text(10, 'Title', { role: 'title' });
  const heading = text(20, 'Heading', { role: 'heading' });
  const cell = { kind: 'group', structure: 'cell', items: [text(30, 'Cell')] } as const;
  const rowOf = (count: number) =>
    ({ kind: 'group', structure: 'row', items: Array.from({ length: count }, () => cell) }) as const;

  it.each([
    ['has no title', [title], { title: '' }],
    ['begins with a lower heading', [heading, title], {}],
    [
      'has a table with rows of different lengths',
      [title, { kind: 'group', structure: 'table', items: [rowOf(2), rowOf(3)] }],
      {},
    ],
    ['has a cell outside a table', [title, cell], {}],
  ] as [string, Item[], Partial<PatternDocument>][])(
    'because it %s does not say so',
    async (_, items, more) => {
      const bytes = await written(items, more);
      expect(saysUa(bytes)).toBe(false);
      expect(pdfUaFaults(bytes)).not.toEqual([]);
      expect(pdfAFaults(bytes)).toEqual([]);
    },
  );
});

describe('a file that was spoilt', () => {
  const spoils: readonly (readonly [string, string, string])[] = [
    ['6.1.2', '%PDF-1.7', '%PDF-1.6'],
    ['6.1.4', ' obj\n<<\n/Type /ExtGState', ' obk\n<<\n/Type /ExtGState'],
    ['6.2.3', '/GTS_PDFA1', '/GTS_PDFA2'],
    ['6.2.11', '/Encoding /Identity-H', '/Encoding /Identity-V'],
    ['6.5', '/PageMode /UseOutlines', '/AA /UseOutlines'],
    ['6.6.2', '<pdfaid:part>2', '<pdfaid:part>1'],
    ['6.6.2', '<pdf:Keywords>', '<pdf:Keywords>yarn'],
    ['7.1', '/Marked true', '/Marked null'],
    ['7.1', '/DisplayDocTitle true', '/DisplayDocTitle null'],
    ['7.2', '/Lang (en)', '/Long (en)'],
    ['7.3', '/Alt (', '/Old ('],
    ['7.4.2', '/S /H1', '/S /H3'],
    ['7.5', '/Scope /Column', '/Scope /Calumn'],
    ['7.18.3', '/Tabs /S', '/Tabs /R'],
  ];

  it('is sound before, with its objects unpacked', async () => {
    const bytes = unpacked(await patternOf(design));
    expect([...pdfAFaults(bytes), ...pdfUaFaults(bytes)]).toEqual([]);
  });

  it.each(spoils)('is caught breaking %s: %s', { timeout: 30_000 }, async (clause, sound, spoilt) => {
    const before = unpacked(await patternOf(design)).toString('latin1');
    expect(before).toContain(sound);
    const bytes = Buffer.from(before.replace(sound, spoilt), 'latin1');
    const faults = [...pdfAFaults(bytes), ...pdfUaFaults(bytes)];
    expect(faults.some((fault) => fault.includes(clause))).toBe(true);
  });
});
