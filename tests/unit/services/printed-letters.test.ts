/** Every letter that the faces have, printed and read back from the PDF. */
import { describe, expect, it } from 'vitest';
import { writePatternPdf } from '../../../app/services/pattern/draw-pdf.ts';
import { faceFiles, type TextFace } from '../../../shared/pattern/faces/face-files.ts';
import { faceMeasures } from '../../../shared/pattern/faces/face-measures.ts';
import type { PatternDocument, TextItem } from '../../../shared/pattern/page/page.ts';
import { newPrinter } from '../../../shared/pattern/page/printable.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { openPdf, textOf } from '../../pdf/pdf-reader.ts';

const faces = Object.keys(faceFiles) as TextFace[];

/** Blocks of Unicode in which names are written, by their names there. */
const blocks = {
  'Latin-1 Supplement': [0xa0, 0xff],
  'Latin Extended-A': [0x100, 0x17f],
  'Latin Extended-B': [0x180, 0x24f],
  'Latin Extended Additional': [0x1e00, 0x1eff],
  'Greek and Coptic': [0x370, 0x3ff],
  'Greek Extended': [0x1f00, 0x1fff],
  Cyrillic: [0x400, 0x4ff],
  'Cyrillic Supplement': [0x500, 0x52f],
} as const;

/** Signs that enclose a letter, as Church Slavonic writes great numbers, stand in no names. */
function lettersOf([from, to]: readonly [number, number]): string[] {
  return Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).filter((letter) =>
    /[^\p{Cn}\p{Cc}\p{Cf}\p{Z}\p{Me}]/u.test(letter),
  );
}

function sheetOf(lines: readonly string[], face: TextItem['face']): PatternDocument {
  const items = lines.map(
    (text, i): TextItem => ({
      kind: 'text',
      x: 10,
      y: 8 + 5 * i,
      text,
      face,
      sizeMm: 3,
      color: '#26231f',
      align: 'left',
      role: i === 0 ? 'title' : 'paragraph',
    }),
  );
  const page = { widthMm: 300, heightMm: 20 + 5 * lines.length, title: 'Letters', items };
  return { title: 'Letters', author: '', language: 'en', pages: [page], notices: [] };
}

async function printed(document: PatternDocument): Promise<{ bytes: number; text: string }> {
  const bytes = await writePatternPdf(document, { date: new Date('2026-03-01T12:00:00Z') });
  if (!bytes) throw new Error('nobody cancelled');
  return { bytes: bytes.length, text: await textOf(await openPdf(bytes), 1) };
}

/** Letters with one shape share one glyph, and are read alike. */
function read(text: string): string {
  return text.normalize('NFC').replaceAll('µ', 'μ').replaceAll('\u00a0', ' ');
}

describe.each(faces)('a name in %s', (face) => {
  it.each(Object.entries(blocks))('prints every letter of %s as itself', async (_, block) => {
    // Coptic, within the block of Greek, is another script, which these faces lack.
    const letters = lettersOf(block).filter((letter) => !/\p{Script=Coptic}/u.test(letter));
    const printer = newPrinter();
    const lines = Array.from({ length: Math.ceil(letters.length / 24) }, (_, i) =>
      printer.printable(`n${letters.slice(24 * i, 24 * i + 24).join(' n')}`, face),
    );
    expect(printer.notices).toEqual([]);
    const { text } = await printed(sheetOf(lines, face));
    expect(read(text)).toBe(read(lines.join(' ')));
  });

  it('keeps marks that have no composed form with their letters, and ligatures as letters', async () => {
    const lines = ['i ị i o ọ o x\u0302 q\u0301 б\u0301', 'office ffl fi fl ff', 'a\u00a0b c'];
    const { text } = await printed(sheetOf(lines, face));
    expect(read(text)).toBe(read(lines.join(' ')));
  });

  it('takes as much of the face into the file as it uses', async () => {
    const letters = [...faceMeasures(face).advances.keys()].map((code) => String.fromCodePoint(code));
    const lines = Array.from({ length: 52 }, (_, i) => letters.slice(50 * i, 50 * i + 50).join(' '));
    const [few, all] = [await printed(sheetOf(['Moth'], face)), await printed(sheetOf(lines, face))];
    // Sizes are this project's own: a face's file takes 400 to 630 kB, its Latin, Greek and Cyrillic 140 to 180 kB.
    expect(few.bytes).toBeLessThan(14_000);
    expect(all.bytes).toBeLessThan(200_000);
  });
});

describe('a letter that a face lacks', () => {
  it.each(faces)('is told of and printed as a question mark in %s, never as a box', (face) => {
    const printer = newPrinter();
    expect(printer.printable('Ⲁ 名 moth 🦋', face)).toBe('? ? moth ?');
    expect(printer.notices).toHaveLength(1);
    for (const letter of 'Ⲁ名🦋') expect(printer.notices[0]).toContain(letter);
  });
});

describe('the alphabet of symbols', () => {
  it('is read back letter by letter', async () => {
    const line = alphabet.map(({ text }) => text).join('');
    expect((await printed(sheetOf([line], 'symbols'))).text.replaceAll(' ', '')).toBe(line);
  });
});
