import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { packObjects } from '../../../app/services/pattern/pdf/pack-objects.ts';
import { openObjects } from '../../pdf/pdf-objects.ts';
import { unpacked } from '../../pdf/unpacked.ts';

/** A file of `pages` pages with a rectangle each, as pdfkit writes it. */
async function plainFile(pages: number): Promise<Buffer> {
  const pdf = new PDFDocument({ autoFirstPage: false, info: { Title: 'Terns (two), ЁΩ \\ stream' } });
  const chunks: Uint8Array[] = [];
  pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve) => pdf.on('end', resolve));
  for (let page = 0; page < pages; page++) pdf.addPage().rect(page, 10, 20, 30).fill('#28455f');
  pdf.end();
  await ended;
  return Buffer.concat(chunks);
}

describe('a file whose objects are packed', () => {
  it.each([1, 90, 300])('says in each of them what it said before, with %i pages', async (pages) => {
    const plain = await plainFile(pages);
    const packed = Buffer.from(packObjects(plain));
    const [before, after] = [openObjects(plain), openObjects(packed)];
    expect(before.objects.size).toBeGreaterThan(3 * pages);
    for (const [object, value] of before.objects) expect(after.objects.get(object)).toEqual(value);
    for (const object of before.objects.keys()) {
      expect(after.bytesOf({ object })).toEqual(before.bytesOf({ object }));
    }
    for (const [object, at] of after.places) {
      expect(after.text.slice(at, at + 20)).toMatch(new RegExp(`^${object} 0 obj\n`));
    }
  });

  it('holds streams, and packs all else', async () => {
    const plain = await plainFile(90);
    const after = openObjects(packObjects(plain));
    const streams = [...openObjects(plain).objects.keys()].filter(
      (object) => openObjects(plain).bytesOf({ object }) !== null,
    );
    // Beside them lie the packed objects, by two hundreds, and the table.
    const more = Math.ceil((openObjects(plain).objects.size - streams.length) / 200) + 1;
    expect(after.places.size).toBe(streams.length + more);
    expect(streams.every((object) => after.places.has(object))).toBe(true);
  });

  it('is smaller', async () => {
    const plain = await plainFile(90);
    expect(packObjects(plain).length).toBeLessThan(0.6 * plain.length);
  });

  it('is the file before, once it is unpacked', async () => {
    const plain = await plainFile(2);
    const [before, after] = [openObjects(plain), openObjects(unpacked(packObjects(plain)))];
    expect([...after.objects].sort(([a], [b]) => a - b)).toEqual(
      [...before.objects].sort(([a], [b]) => a - b),
    );
  });

  it('is refused where it has no table of places', () => {
    expect(() => packObjects(Buffer.from('%PDF-1.7\n'))).toThrow('without a table of places');
  });
});
