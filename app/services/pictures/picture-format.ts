export type PictureFormat = 'png' | 'jpeg' | 'webp';

/** What the first bytes of each format are; null stands for any byte. */
const signatures: Record<PictureFormat, readonly (number | null)[]> = {
  png: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
  jpeg: [0xff, 0xd8, 0xff],
  webp: [0x52, 0x49, 0x46, 0x46, null, null, null, null, 0x57, 0x45, 0x42, 0x50],
};

/**
 * The format of a picture by its content, whatever its file is called; null for everything that the studio does not
 * read. Nothing else is ever given to a decoder.
 */
export function pictureFormat(bytes: Uint8Array): PictureFormat | null {
  for (const [format, signature] of Object.entries(signatures)) {
    if (signature.every((byte, i) => byte === null || byte === bytes[i])) return format as PictureFormat;
  }
  return null;
}
