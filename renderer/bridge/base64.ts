/** Bytes as base64 in the page, in parts that the platform's own functions take at once. */

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
