/**
 * Picture files for tests, made by code: a scene of our own (a kite over dunes) and the same in every format, depth and
 * colour space that a picture may come in.
 */
import sharp, { type Sharp } from 'sharp';

/** Sky above, a red kite in it, sand below: flat colours, so that charts of them are known. */
export const scene = { sky: '#8fb4cc', kite: '#b03a2e', sand: '#d9c08f' } as const;

export interface Scene {
  rgb: Buffer;
  widthPx: number;
  heightPx: number;
}

/** `scale` pixels to a cell of a chart of 12 x 8: sand in the lowest 3 rows, the kite at cords 8 to 10, rows 2 and 3. */
export function kiteOverDunes(scale = 10): Scene {
  const widthPx = 12 * scale;
  const heightPx = 8 * scale;
  const rgb = Buffer.alloc(widthPx * heightPx * 3);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const row = Math.floor(y / scale);
      const cord = Math.floor(x / scale);
      const isKite = cord >= 7 && cord < 10 && row >= 1 && row < 3;
      const colour = row >= 5 ? scene.sand : isKite ? scene.kite : scene.sky;
      rgb.writeUIntBE(Number.parseInt(colour.slice(1), 16), (y * widthPx + x) * 3, 3);
    }
  }
  return { rgb, widthPx, heightPx };
}

export function sharpOf({ rgb, widthPx, heightPx }: Scene): Sharp {
  return sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } });
}

/** Which side of the upright picture the first row and the first column of the file are (EXIF 2.32, tag 0x0112). */
const sides = {
  1: ['top', 'left'],
  2: ['top', 'right'],
  3: ['bottom', 'right'],
  4: ['bottom', 'left'],
  5: ['left', 'top'],
  6: ['right', 'top'],
  7: ['right', 'bottom'],
  8: ['left', 'bottom'],
} as const;

/** The pixels of an upright picture in the order in which a file with this EXIF tag holds them. */
export function layAs(tag: keyof typeof sides, { rgb, widthPx, heightPx }: Scene): Scene {
  const [rowSide, columnSide] = sides[tag];
  const isTurned = rowSide === 'left' || rowSide === 'right';
  const laid = { widthPx: isTurned ? heightPx : widthPx, heightPx: isTurned ? widthPx : heightPx };
  const from = (side: string, at: number) => {
    if (side === 'right') return { x: widthPx - 1 - at };
    if (side === 'bottom') return { y: heightPx - 1 - at };
    return side === 'left' ? { x: at } : { y: at };
  };
  const pixels = Buffer.alloc(rgb.length);
  for (let row = 0; row < laid.heightPx; row++) {
    for (let column = 0; column < laid.widthPx; column++) {
      const { x, y } = { x: 0, y: 0, ...from(rowSide, row), ...from(columnSide, column) };
      rgb.copy(pixels, (row * laid.widthPx + column) * 3, (y * widthPx + x) * 3, (y * widthPx + x + 1) * 3);
    }
  }
  return { rgb: pixels, ...laid };
}

/** A size that no decoder should be given: a PNG header of any width and height over a few bytes of pixels. */
export function bomb(widthPx: number, heightPx: number, png: Buffer): Buffer {
  const bytes = Buffer.from(png);
  bytes.writeUInt32BE(widthPx, 16);
  bytes.writeUInt32BE(heightPx, 20);
  bytes.writeUInt32BE(crc32(bytes.subarray(12, 29)), 29);
  return bytes;
}

/** The checksum of a PNG chunk (PNG, third edition, annex D). */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** A moving PNG: the frame of `first` is what a picture shows, `second` follows in chunks of its own. */
export function movingPng(first: Buffer, second: Buffer): Buffer {
  const chunks = (png: Buffer) => {
    const found: { type: string; data: Buffer }[] = [];
    for (let at = 8; at < png.length; ) {
      const length = png.readUInt32BE(at);
      found.push({
        type: png.toString('latin1', at + 4, at + 8),
        data: png.subarray(at + 8, at + 8 + length),
      });
      at += length + 12;
    }
    return found;
  };
  const data = (png: Buffer) =>
    Buffer.concat(chunks(png).flatMap((each) => (each.type === 'IDAT' ? [each.data] : [])));
  const header = chunks(first)[0]!.data;
  const frame = (sequence: number) => {
    const control = Buffer.alloc(26);
    control.writeUInt32BE(sequence, 0);
    control.set(header.subarray(0, 8), 4);
    control.writeUInt16BE(1, 20);
    control.writeUInt16BE(10, 22);
    return control;
  };
  const twoFrames = Buffer.from([0, 0, 0, 2, 0, 0, 0, 0]);
  return Buffer.concat([
    first.subarray(0, 8),
    chunk('IHDR', header),
    chunk('acTL', twoFrames),
    chunk('fcTL', frame(0)),
    chunk('IDAT', data(first)),
    chunk('fcTL', frame(1)),
    chunk('fdAT', Buffer.concat([Buffer.from([0, 0, 0, 2]), data(second)])),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Uint8Array): Buffer {
  const bytes = Buffer.alloc(data.length + 12);
  bytes.writeUInt32BE(data.length, 0);
  bytes.write(type, 4, 'latin1');
  bytes.set(data, 8);
  bytes.writeUInt32BE(crc32(bytes.subarray(4, data.length + 8)), data.length + 8);
  return bytes;
}
