/** Pictures on pages, as they come into the PDF. */
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { writePatternPdf } from '../../../app/services/pattern/draw-pdf.ts';
import type { PdfDictionary } from '../../../app/services/pdf-in/pdf-values.ts';
import type { ImageItem, PatternDocument } from '../../../shared/pattern/page/page.ts';
import { nameOf, openObjects } from '../../pdf/pdf-objects.ts';
import { readAloud } from '../../pdf/pdf-reader.ts';

const cloth = (channels: 3 | 4 = 3): Sharp =>
  sharp({
    create: { width: 40, height: 30, channels, background: channels === 3 ? '#9e3329' : '#9e332980' },
  });

async function bytesOf(picture: Sharp): Promise<Uint8Array> {
  return new Uint8Array(await picture.toBuffer());
}

function imageOf(bytes: Uint8Array, alt = 'A red cloth'): ImageItem {
  return { kind: 'image', x: 10, y: 10, width: 40, height: 30, mediaType: 'image/jpeg', bytes, alt };
}

/** A document with a page for each list of pictures. */
async function written(...pages: ImageItem[][]): Promise<{ bytes: Uint8Array; notices: string[] }> {
  const document: PatternDocument = {
    title: 'Pictures',
    author: '',
    language: 'en',
    pages: pages.map((items, i) => ({ widthMm: 100, heightMm: 100, title: `Page ${i + 1}`, items })),
    notices: [],
  };
  const notices: string[] = [];
  const bytes = await writePatternPdf(document, {
    date: new Date('2026-03-01T12:00:00Z'),
    onNotice: (notice) => notices.push(notice),
  });
  if (!bytes) throw new Error('nobody cancelled');
  return { bytes, notices };
}

function holds(file: Uint8Array, part: Uint8Array): boolean {
  return Buffer.from(file).includes(Buffer.from(part));
}

function imagesIn(bytes: Uint8Array): PdfDictionary[] {
  return [...openObjects(bytes).objects.values()].filter(
    (value): value is PdfDictionary => value instanceof Map && nameOf(value.get('Subtype')) === 'Image',
  );
}

describe('a picture on a page', () => {
  it('is in the file once, however often it is drawn, and drawn where it stands', async () => {
    const image = imageOf(await bytesOf(cloth().jpeg()));
    const { bytes } = await written([image, { ...image, y: 50 }], [image]);
    expect(imagesIn(bytes)).toHaveLength(1);
    const draws = openObjects(bytes).pages.map(({ operators }) =>
      operators.filter(({ name }) => name === 'Do'),
    );
    expect(draws.map((each) => each.length)).toEqual([2, 1]);
    const placed = openObjects(bytes)
      .pages[1]!.operators.filter(({ name }) => name === 'cm')
      .at(-1)!;
    expect(placed.operands).toEqual(['40', '0', '0', '-30', '10', '40']);
  });

  it('is made anew without colours where it is in greys', async () => {
    const jpeg = await bytesOf(cloth().jpeg());
    const { bytes } = await written([{ ...imageOf(jpeg), inGreys: true }]);
    expect(holds(bytes, jpeg)).toBe(false);
    const file = Buffer.from(bytes);
    // A JPEG begins with SOI and APP0 and ends with EOI: ITU-T T.81, B.2.1.
    const from = file.indexOf(Buffer.from([0xff, 0xd8, 0xff]));
    const { channels } = await sharp(file.subarray(from)).stats();
    expect(new Set(channels.map(({ mean }) => Math.round(mean))).size).toBe(1);
  });

  it('is a JPEG as it came where it is upright and in sRGB, and made anew where it is not', async () => {
    const plain = await bytesOf(cloth().jpeg());
    const one = await written([imageOf(plain)]);
    expect(holds(one.bytes, plain)).toBe(true);
    for (const other of [
      cloth().jpeg().withMetadata({ orientation: 6 }),
      cloth().toColourspace('cmyk').jpeg(),
    ]) {
      const bytes = await bytesOf(other);
      const { bytes: pdf } = await written([imageOf(bytes)]);
      expect(holds(pdf, bytes)).toBe(false);
      expect(imagesIn(pdf).map((image) => nameOf(image.get('ColorSpace')))).toEqual(['DeviceRGB']);
    }
  });

  it('keeps its transparency, and none is written for a PNG that has none', async () => {
    const clear = imagesIn((await written([imageOf(await bytesOf(cloth(4).png()))])).bytes);
    expect(clear.filter((image) => image.has('SMask'))).toHaveLength(1);
    expect(clear).toHaveLength(2);
    const opaque = imagesIn((await written([imageOf(await bytesOf(cloth().png()))])).bytes);
    expect(opaque.map((image) => image.has('SMask'))).toEqual([false]);
  });

  it('is told in its words, and passed over where it has none', async () => {
    const bytes = await bytesOf(cloth().png());
    const pdf = (await written([imageOf(bytes), imageOf(bytes, '')])).bytes;
    expect(await readAloud(pdf)).toEqual([['Figure (A red cloth)']]);
  });

  it('is left out where it is damaged, and that is said', async () => {
    const whole = await bytesOf(cloth().png());
    const torn = whole.slice(0, whole.length - 30);
    const { bytes, notices } = await written([imageOf(torn), imageOf(whole)]);
    expect(imagesIn(bytes)).toHaveLength(1);
    expect(notices).toHaveLength(1);
    expect(notices[0]).toMatch(/^The picture “A red cloth” is left out\. .*damaged/);
    const drawing = imageOf(new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>'));
    expect((await written([drawing])).notices[0]).toContain('not a PNG');
  });

  it('gives the same bytes for the same picture and day', async () => {
    const image = imageOf(await bytesOf(cloth(4).png()));
    const [first, second] = [await written([image]), await written([image])];
    expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
  });
});
