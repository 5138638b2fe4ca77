/** Files that tell by themselves whether they are whole: a version's number, again and again. */

const NUMBERS = 200_000;

export function versionBytes(version: number): Uint8Array {
  const numbers = new Uint32Array(NUMBERS).fill(version);
  return new Uint8Array(numbers.buffer);
}

export function isWhole(bytes: Uint8Array): boolean {
  const [version = 0] = new Uint32Array(bytes.slice(0, 4).buffer);
  return version > 0 && Buffer.compare(bytes, versionBytes(version)) === 0;
}
