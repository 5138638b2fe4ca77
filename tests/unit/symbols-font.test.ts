/** The symbol font as readers of fonts and of PDF files see it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as fontkit from 'fontkit';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import PDFDocument from 'pdfkit';
import { describe, expect, it, vi } from 'vitest';
import { fontBytes } from '../../build/symbols/font-bytes.ts';
import { liftShapes } from '../../shared/yarn/lift-shapes.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';

const path = fileURLToPath(new URL('../../shared/yarn/larkrow-symbols.otf', import.meta.url));
const texts = alphabet.map(({ text }) => text);
const glyphTexts = [...texts, ...Object.values(liftShapes).map(({ text }) => text)];

describe('the symbol font', () => {
  it('is the one that the script makes from the alphabet now', () => {
    expect(Buffer.from(fontBytes()).equals(readFileSync(path))).toBe(true);
  });

  it('is made of the same bytes whenever it is made', () => {
    vi.useFakeTimers({ now: new Date('2031-07-09T12:00:00Z') });
    try {
      expect(Buffer.from(fontBytes()).equals(readFileSync(path))).toBe(true);
    } finally {
      vi.useRealTimers();
    }
  });

  it('has the sum that a whole font must have (OpenType specification, table head)', () => {
    const bytes = readFileSync(path);
    let sum = 0;
    for (let at = 0; at < bytes.length; at += 4) sum = (sum + bytes.readUInt32BE(at)) >>> 0;
    expect(sum).toBe(0xb1b0afba);
  });

  it('is read by fontkit: a glyph for each text and lift mark, all as wide as the em', () => {
    const font = fontkit.openSync(path) as fontkit.Font;
    expect(font.familyName).toBe('Larkrow Symbols');
    expect(font.unitsPerEm).toBe(1000);
    expect([font.ascent, font.descent]).toEqual([1000, 0]);
    // A table of characters ends with the place holder 0xffff.
    const characters = font.characterSet.filter((each) => each !== 0xffff);
    expect(String.fromCodePoint(...characters)).toBe([' ', ...glyphTexts].sort().join(''));
    for (const text of glyphTexts) {
      const glyph = font.glyphForCodePoint(text.codePointAt(0)!);
      expect(glyph.advanceWidth, text).toBe(1000);
      expect(glyph.path.commands.length, text).toBeGreaterThan(0);
    }
  });

  it('gives the letters back from a PDF', async () => {
    const rows = [texts.slice(0, 32).join(''), texts.slice(32).join(''), 'aabccc'];
    const file = await pdfOf(rows);
    const task = getDocument({ data: file, verbosity: 0 });
    const page = await (await task.promise).getPage(1);
    const { items } = await page.getTextContent();
    const found = items.flatMap((item) => ('str' in item && item.str.trim() ? [item.str] : []));
    await task.destroy();
    expect(found).toEqual(rows);
  });
});

function pdfOf(rows: readonly string[]): Promise<Uint8Array> {
  const doc = new PDFDocument({ size: [400, 100] });
  const parts: Buffer[] = [];
  return new Promise((resolve, reject) => {
    doc.on('data', (part: Buffer) => parts.push(part));
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(parts))));
    doc.on('error', reject);
    doc.registerFont('symbols', path).font('symbols').fontSize(10);
    for (const [i, row] of rows.entries()) doc.text(row, 10, 10 + i * 20, { lineBreak: false });
    doc.end();
  });
}
