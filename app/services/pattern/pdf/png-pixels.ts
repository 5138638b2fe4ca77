/**
 * The packed rows of a PNG that was made here: 8 bits a channel, grey or red, green, blue, not interlaced. Chunks as in
 * 'Portable Network Graphics (PNG) Specification', W3C, section 5: length, name, data, checksum.
 */
export interface PngPixels {
  readonly channels: 1 | 3;
  /** The image data of all its chunks: each row with its filter's number before it, deflated. */
  readonly packed: Uint8Array;
}

/** By the colour type in the header. */
const channelsOf: Readonly<Record<number, 1 | 3>> = { 0: 1, 2: 3 };

/** Throws on a PNG of another kind: none is made here. */
export function pngPixels(png: Uint8Array): PngPixels {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const packed: Uint8Array[] = [];
  let channels: 1 | 3 | undefined;
  for (let at = SIGNATURE_BYTES; at + 8 <= png.length; ) {
    const length = view.getUint32(at);
    const name = String.fromCharCode(...png.subarray(at + 4, at + 8));
    const data = png.subarray(at + 8, at + 8 + length);
    if (name === 'IHDR' && data[8] === 8 && data[12] === 0) channels = channelsOf[data[9]!];
    if (name === 'IDAT') packed.push(data);
    at += length + 12;
  }
  if (!channels || packed.length === 0) throw new Error('a PNG that was not made here');
  return { channels, packed: Uint8Array.from(Buffer.concat(packed)) };
}

const SIGNATURE_BYTES = 8;
