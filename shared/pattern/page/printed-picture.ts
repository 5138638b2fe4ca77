/**
 * A picture that is kept as text, in base64, as what a page needs to print it: its bytes and its proportions. One that can't be
 * read is left out: it was looked at when it was taken, so this is a file that something else has written.
 */
import type { ImageItem } from './page.ts';

/** A PNG or JPEG as the imprint and the design keep it. */
export interface KeptPicture {
  readonly mediaType: ImageItem['mediaType'];
  /** In one piece or in several. */
  readonly base64: string | readonly string[];
}

export interface PrintedPicture extends Pick<ImageItem, 'mediaType' | 'bytes'> {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The same bytes for the same picture, so that it stands in a file only once, on however many pages. */
const printed = new WeakMap<KeptPicture, PrintedPicture | null>();

/** Null where it is no PNG or JPEG. */
export function printedPicture(kept: KeptPicture): PrintedPicture | null {
  const before = printed.get(kept);
  if (before !== undefined) return before;
  const picture = readPicture(kept);
  printed.set(kept, picture);
  return picture;
}

function readPicture({ mediaType, base64 }: KeptPicture): PrintedPicture | null {
  const bytes = bytesOf(typeof base64 === 'string' ? base64 : base64.join(''));
  const size = mediaType === 'image/png' ? pngSize(bytes) : jpegSize(bytes);
  return size && size.widthPx > 0 && size.heightPx > 0 ? { mediaType, bytes, ...size } : null;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const values = new Map([...LETTERS].map((letter, value) => [letter.charCodeAt(0), value]));

/** By RFC 4648, section 4; letters that are none are passed over. */
function bytesOf(base64: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((base64.length * 3) / 4));
  let length = 0;
  let bits = 0;
  let held = 0;
  for (let i = 0; i < base64.length; i++) {
    const value = values.get(base64.charCodeAt(i));
    if (value === undefined) continue;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[length++] = (held >> bits) & 255;
  }
  return bytes.slice(0, length);
}

type Size = Pick<PrintedPicture, 'widthPx' | 'heightPx'>;

/** W3C Portable Network Graphics, 11.2.1: width and height are the first fields of the first chunk. */
function pngSize(bytes: Uint8Array): Size | null {
  if (bytes.length < 24 || bytes[0] !== 0x89 || bytes[1] !== 0x50) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
}

/** ITU-T T.81, B.2.2: the frame header holds height and width. Segments before it are passed over by their lengths. */
function jpegSize(bytes: Uint8Array): Size | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  for (let at = 2; at + 9 < bytes.length; ) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    if (isFrame(marker)) return { widthPx: view.getUint16(at + 7), heightPx: view.getUint16(at + 5) };
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return null;
}

/** SOF0 to SOF15, but for the tables and the reserved marker among them. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}
