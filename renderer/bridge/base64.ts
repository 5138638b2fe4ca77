/** Bytes as base64 in the page, in parts that the platform's own functions take at once. */

import { limits } from '../../shared/design/limits.ts';

/** A multiple of three, so that parts can stand side by side. */
const PART_BYTES = 3 * 8192;

export function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += PART_BYTES) {
    text += btoa(String.fromCharCode(...bytes.subarray(from, from + PART_BYTES)));
  }
  return text;
}

export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}

/** As a design file keeps a picture: in lines, so that no text of it grows too long. */
export function base64Lines(bytes: Uint8Array): string[] {
  const text = toBase64(bytes);
  const chars = limits.referenceLineChars;
  return Array.from({ length: Math.ceil(text.length / chars) }, (_, i) =>
    text.slice(i * chars, (i + 1) * chars),
  );
}
