import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Bundles } from './bundles.ts';

/** SHA-256, in hex, of all that labels tell of the bundles, so that it can be seen whether labels still fit. */
export function cutListHash({ bundles }: Bundles): string {
  const told = bundles.map(({ yarn, cutMm, pieces }) => [
    yarn,
    cutMm,
    pieces.map(({ number, row }) => [number, row]),
  ]);
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(told))));
}
