/**
 * The one place where pictures are decoded. Before any pixel is, a picture has shown by its first bytes that it is
 * PNG, JPEG or WebP, and by its header that it is within the limit. Turned upright by its EXIF tag, in sRGB whatever
 * profile, depth or colour space it came in, the first frame of a moving one. A damaged picture is never half read.
 *
 * Memory: a picture of 40 million pixels is 120 MB of pixels, 160 MB with transparency, and about as much again while
 * it is turned upright or unpacked from WebP. Measured, the whole process with a chart made: JPEG 250 MB, turned 330,
 * PNG with transparency 290, WebP 400.
 */
import sharp, { type Sharp } from 'sharp';
import { limits } from '../../../shared/design/limits.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { pictureFormat } from './picture-format.ts';

export interface OpenPicture {
  readonly bytes: Uint8Array;
  /** After turning it upright. */
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface Pixels {
  /** Row by row: red, green, blue in sRGB, and alpha (not premultiplied) where there are 4 channels. */
  readonly bytes: Uint8Array;
  readonly channels: 3 | 4;
}

export interface Preview {
  readonly png: Uint8Array<ArrayBuffer>;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** No picture of ours takes a tenth of this; one that does is made to keep the studio busy. */
const MOST_SECONDS = 30;

/** Only these loaders exist for sharp, so that a disguised file finds no other; and no file is remembered. */
const loaders = ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp'];
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({ operation: loaders });
sharp.cache(false);

/** Reads the header only. Problems: `not-a-picture`, `damaged-picture`, `too-many-pixels`. */
export async function openPicture(bytes: Uint8Array): Promise<Result<OpenPicture>> {
  if (!pictureFormat(bytes)) return notAPicture;
  try {
    // The limit is ours to tell, so that the sentence can name the picture's size.
    const { autoOrient } = await sharp(bytes, { limitInputPixels: false }).metadata();
    const { width: widthPx, height: heightPx } = autoOrient;
    return widthPx * heightPx > limits.picturePixels
      ? tooManyPixels(widthPx, heightPx)
      : good({ bytes, widthPx, heightPx });
  } catch {
    return damaged;
  }
}

/** The pixels of a part of the picture, which lies inside it. Problems: `damaged-picture`, `too-slow`. */
export async function pixelsOf(
  picture: OpenPicture,
  crop: { x: number; y: number; width: number; height: number },
): Promise<Result<Pixels>> {
  const pipeline = upright(picture)
    .extract({ left: crop.x, top: crop.y, width: crop.width, height: crop.height })
    .raw({ depth: 'uchar' });
  try {
    const { data, info } = await pipeline.toBuffer({ resolveWithObject: true });
    if (info.channels !== 3 && info.channels !== 4) throw new Error(`${info.channels} channels of colour`);
    return good({ bytes: data, channels: info.channels });
  } catch (error) {
    return failed(error);
  }
}

/** The picture as PNG, at most `side` pixels wide and high, never enlarged. Problems as of `pixelsOf`. */
export async function previewOf(picture: OpenPicture, side: number): Promise<Result<Preview>> {
  const pipeline = upright(picture)
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    // It only goes to the screen: quick to make matters more than small.
    .png({ compressionLevel: 2 });
  try {
    const { data, info } = await pipeline.toBuffer({ resolveWithObject: true });
    return good({ png: new Uint8Array(data), widthPx: info.width, heightPx: info.height });
  } catch (error) {
    return failed(error);
  }
}

/** A picture as it will be stored: small, and in a format that every page shows. */
export interface StoredPicture {
  readonly mediaType: 'image/png' | 'image/jpeg';
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The picture at most `side` pixels wide and high: PNG where any pixel lets light through, else JPEG. Problems as of `pixelsOf`. */
export async function storedAt(picture: OpenPicture, side: number): Promise<Result<StoredPicture>> {
  const pipeline = upright(picture).resize({
    width: side,
    height: side,
    fit: 'inside',
    withoutEnlargement: true,
  });
  try {
    const raw = await pipeline.raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true });
    const { width, height, channels } = raw.info;
    const small = sharp(raw.data, { raw: { width, height, channels } });
    const isOpaque = channels === 3 || (await small.stats()).isOpaque;
    const made = isOpaque ? small.removeAlpha().jpeg({ quality: 82 }) : small.png({ compressionLevel: 9 });
    return good({
      mediaType: isOpaque ? 'image/jpeg' : 'image/png',
      bytes: new Uint8Array(await made.toBuffer()),
      widthPx: width,
      heightPx: height,
    });
  } catch (error) {
    return failed(error);
  }
}

/** A picture as paper takes it: a JPEG, or PNGs of its colours and, where light passes through, of its opacity in grey. */
export type PrintablePicture = { readonly widthPx: number; readonly heightPx: number } & (
  | { readonly kind: 'jpeg'; readonly bytes: Uint8Array; readonly channels: 1 | 3 }
  | { readonly kind: 'png'; readonly color: Uint8Array; readonly opacity: Uint8Array | null }
);

/**
 * All of its pixels are read, so that nothing damaged is printed. A JPEG that is upright and in sRGB goes on paper as it is;
 * any other is made anew, and so is one in colours that is to be in greys. Problems as of `pixelsOf`.
 */
export async function printable(
  picture: OpenPicture,
  { inGreys = false }: { readonly inGreys?: boolean } = {},
): Promise<Result<PrintablePicture>> {
  const { widthPx, heightPx } = picture;
  const size = { widthPx, heightPx };
  try {
    const { format, space, channels, orientation = 1, icc, hasAlpha } = await sharp(picture.bytes).metadata();
    if (format === 'jpeg') {
      const isPlain = orientation === 1 && !icc && (space === 'b-w' || (space === 'srgb' && !inGreys));
      const anew = await inked(picture, inGreys).jpeg({ quality: 90 }).toBuffer();
      return good({
        ...size,
        kind: 'jpeg',
        bytes: isPlain ? picture.bytes : anew,
        channels: isPlain && channels === 1 ? 1 : 3,
      });
    }
    const isOpaque = !hasAlpha || (await upright(picture).stats()).isOpaque;
    const png = { compressionLevel: 9, adaptiveFiltering: true } as const;
    const color = await inked(picture, inGreys).removeAlpha().png(png).toBuffer();
    const opacity = isOpaque ? null : await upright(picture).extractChannel('alpha').png(png).toBuffer();
    return good({ ...size, kind: 'png', color, opacity });
  } catch (error) {
    return failed(error);
  }
}

function inked(picture: OpenPicture, inGreys: boolean): Sharp {
  return inGreys ? upright(picture).greyscale() : upright(picture);
}

function upright({ bytes }: OpenPicture): Sharp {
  return sharp(bytes, { failOn: 'warning', limitInputPixels: limits.picturePixels, sequentialRead: true })
    .timeout({ seconds: MOST_SECONDS })
    .autoOrient()
    .toColourspace('srgb');
}

function failed(error: unknown): ReturnType<typeof problem> {
  return /timeout/i.test(String(error)) ? tooSlow : damaged;
}

const notAPicture = problem(
  'not-a-picture',
  'That file is not a PNG, JPEG or WebP picture. Save the picture as one of these where it was made, and choose that file.',
);

const damaged = problem(
  'damaged-picture',
  "The picture is damaged or cut short and can't be read as a whole. Copy or save it again from where it came, and choose the new file.",
);

const tooSlow = problem(
  'too-slow',
  `The picture takes more than ${MOST_SECONDS} seconds to read. Save it again where it was made, and choose the new file.`,
);

function tooManyPixels(widthPx: number, heightPx: number): ReturnType<typeof problem> {
  const most = limits.picturePixels / 1_000_000;
  return problem(
    'too-many-pixels',
    `The picture has ${widthPx} × ${heightPx} pixels; ${most} million in all are the most that Larkrow opens. Save it smaller where it was made: a chart needs far fewer.`,
  );
}
