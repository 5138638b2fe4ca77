/**
 * 10,000 damaged patterns, always the same ones: each is answered with the design inside or with one sentence, and soon.
 * `LARKROW_DAMAGED=1000000` tries as many as one wishes.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { makePattern } from '../../app/services/pattern/make-pattern.ts';
import { designInPdf } from '../../app/services/pdf-in/design-in-pdf.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { designFromLetters } from '../notation.ts';
import { pick, type Random, seeded, whole } from './random-edit.ts';

type Reader = (bytes: Uint8Array) => ReturnType<typeof designInPdf>;

const files = Number(process.env.LARKROW_DAMAGED ?? 10_000);
const maxMs = 2_000;
const design = designFromLetters(['aab-', 'bbaa'], { title: 'Damaged' });
const text = writeDesign(design);
let sound = '';

beforeAll(async () => {
  const date = new Date('2026-03-01T12:00:00Z');
  const made = await makePattern(design, { paper: 'a4', units: 'metric', date, attachDesign: true });
  if (!made.ok) throw new Error(made.problem.sentence);
  sound = Buffer.from(made.value.bytes).toString('latin1');
});

/** What a parser could trip over, put where it does not belong. */
const scraps = [
  ...[
    '1 0 obj',
    'endobj',
    'stream\n',
    'endstream',
    'trailer << /Root 1 0 R >>',
    '/Root 2 0 R',
    '<<',
    '>>',
    '[',
    ']',
  ],
  ...['(', ')', '\\', '<', '%', '/', '/#00#', '99999999999 0 R', '1 0 R', '/Length -1', '/Length 1e99', '\0'],
  ...[
    '/Type /ObjStm /N 99999999 /First -5',
    '/Filter [/FlateDecode /FlateDecode]',
    '['.repeat(5000),
    '<<'.repeat(5000),
  ],
  ...[
    '/Kids [1 0 R 1 0 R]',
    '(('.repeat(5000),
    '%'.repeat(5000),
    `/${'x'.repeat(5000)}`,
    '/EF << /F 1 0 R >>',
  ],
];

const damages: Readonly<Record<string, (random: Random) => string>> = {
  'other bytes': (random) => {
    const bytes = Buffer.from(sound, 'latin1');
    for (let left = 1 + whole(random, 40); left > 0; left--)
      bytes[whole(random, bytes.length)] = whole(random, 256);
    return bytes.toString('latin1');
  },
  'cut short': (random) => sound.slice(0, whole(random, sound.length)),
  'a lost block': (random) => {
    const from = whole(random, sound.length);
    return sound.slice(0, from) + sound.slice(from + 1 + whole(random, 5000));
  },
  'a scrap in between': (random) => {
    const at = whole(random, sound.length);
    return sound.slice(0, at) + pick(random, scraps) + sound.slice(at);
  },
  /** Where the design is told of, at the end, so that most of these strike it. */
  'a scrap near the design': (random) => {
    const at = sound.indexOf('/EmbeddedFile') - 200 + whole(random, 1500);
    return sound.slice(0, at) + pick(random, scraps) + sound.slice(at + whole(random, 12));
  },
  'numbers changed': (random) =>
    sound.replace(/\d+ 0 R/g, (reference) =>
      whole(random, 40) === 0 ? `${whole(random, 400)} 0 R` : reference,
    ),
  'nothing but scraps': (random) =>
    Array.from({ length: whole(random, 300) }, () => pick(random, scraps)).join(' '),
};

/** What went wrong with `count` files; a search for one finding ends with it. */
function findings(read: Reader, count: number, most = Number.POSITIVE_INFINITY) {
  const random = seeded(20260301);
  const kinds = Object.entries(damages);
  const found: string[] = [];
  let opened = 0;
  for (let file = 0; file < count && found.length < most; file++) {
    const [damage, make] = kinds[file % kinds.length]!;
    const bytes = Buffer.from(make(random), 'latin1');
    const start = performance.now();
    try {
      const answer = read(bytes);
      if (!answer.ok && !/[.)]$/.test(answer.problem.sentence))
        found.push(`file ${file}, ${damage}: no sentence`);
      if (answer.ok) opened++;
      if (answer.ok && damage !== 'nothing but scraps' && writeDesign(answer.value.design) !== text) {
        found.push(`file ${file}, ${damage}: another design`);
      }
    } catch (thrown) {
      found.push(`file ${file}, ${damage}: threw ${String(thrown)}`);
    }
    const ms = performance.now() - start;
    if (ms > maxMs) found.push(`file ${file}, ${damage}: took ${Math.round(ms)} ms`);
  }
  return { found, opened };
}

describe('damaged patterns', () => {
  it(`give the design inside or a sentence, ${files} times`, { timeout: 60_000 + files * 20 }, () => {
    const { found, opened } = findings(designInPdf, files);
    expect(found).toEqual([]);
    // Most bytes of a pattern are its pages: the design is still there without them.
    expect(opened).toBeGreaterThan(files / 4);
    expect(opened).toBeLessThan(files);
  });

  it('would be caught stopping a reader that trusts what it reads', () => {
    const trusting: Reader = (bytes) => {
      const at = Buffer.from(bytes).indexOf('/EmbeddedFile');
      if (at < 0) throw new Error('no file');
      return designInPdf(bytes);
    };
    expect(findings(trusting, 1000, 1).found).toHaveLength(1);
  });
});
