/**
 * The pictures of a document, each embedded once, however often it is drawn. They are decoded before they are embedded:
 * a damaged one is left out and told of, and what is written does not hang on how it came.
 */

import type { ImageItem } from '../../../../shared/pattern/page/page.ts';
import type { Result } from '../../../../shared/result.ts';
import { openPicture, type PrintablePicture, printable } from '../../pictures/decoder.ts';
import { insideOf, type PdfInside, type PdfRef } from './pdf-inside.ts';
import { pngPixels } from './png-pixels.ts';

export interface PdfImages {
  /** The picture's name among the resources of the page that is drawn; null where it could not be read. */
  nameOn(image: ImageItem): string | null;
}

/** `onNotice` is told a sentence for each picture that can't be read. */
export async function embedImages(
  pdf: PDFKit.PDFDocument,
  images: readonly ImageItem[],
  onNotice: (sentence: string) => void,
): Promise<PdfImages> {
  const inside = insideOf(pdf);
  const embedded = new Map<Uint8Array, { readonly name: string; readonly ref: PdfRef }>();
  for (const { bytes, alt, inGreys = false } of images) {
    if (embedded.has(bytes)) continue;
    const picture = await readPicture(bytes, inGreys);
    if (picture.ok)
      embedded.set(bytes, { name: `Im${embedded.size + 1}`, ref: embed(inside, picture.value) });
    else onNotice(`The picture “${alt}” is left out. ${picture.problem.sentence}`);
  }
  return {
    nameOn({ bytes }) {
      const image = embedded.get(bytes);
      if (!image) return null;
      inside.page.xobjects[image.name] = image.ref;
      return image.name;
    },
  };
}

async function readPicture(bytes: Uint8Array, inGreys: boolean): Promise<Result<PrintablePicture>> {
  const picture = await openPicture(bytes);
  return picture.ok ? printable(picture.value, { inGreys }) : picture;
}

function embed(inside: PdfInside, picture: PrintablePicture): PdfRef {
  const { widthPx, heightPx } = picture;
  if (picture.kind === 'jpeg') {
    const { bytes, channels } = picture;
    const ref = inside.ref({ ...imageOf(widthPx, heightPx, channels), Filter: 'DCTDecode' });
    ref.end(bytes);
    return ref;
  }
  const opacity = picture.opacity && embedPng(inside, picture.opacity, widthPx, heightPx);
  return embedPng(inside, picture.color, widthPx, heightPx, opacity ? { SMask: opacity } : {});
}

/** The rows of a PNG are packed as a PDF's can be, so they are taken as they are. */
function embedPng(
  inside: PdfInside,
  png: Uint8Array,
  width: number,
  height: number,
  more: object = {},
): PdfRef {
  const { channels, packed } = pngPixels(png);
  const ref = inside.ref({
    ...imageOf(width, height, channels),
    Filter: 'FlateDecode',
    DecodeParms: { Predictor: 15, Colors: channels, BitsPerComponent: 8, Columns: width },
    ...more,
  });
  ref.end(packed);
  return ref;
}

function imageOf(width: number, height: number, channels: 1 | 3): object {
  return {
    Type: 'XObject',
    Subtype: 'Image',
    Width: width,
    Height: height,
    BitsPerComponent: 8,
    ColorSpace: channels === 1 ? 'DeviceGray' : 'DeviceRGB',
  };
}
