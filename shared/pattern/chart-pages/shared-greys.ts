/** Yarns that touch and are printed in one grey in a copy in greys: a printer keeps fewer greys apart than a picture may have yarns. */
import { codeOf } from '../../design/codes.ts';
import type { Yarn } from '../../design/schema.ts';
import type { TouchingPair } from '../../yarn/touching.ts';
import { printedGreys } from './printed-greys.ts';

/** Of `pairs`, in their order. */
export function sharedGreys(
  yarns: readonly Pick<Yarn, 'id' | 'color'>[],
  pairs: readonly TouchingPair[],
): TouchingPair[] {
  const greys = printedGreys(yarns, pairs);
  const greyOf = new Map(yarns.map(({ id }, i) => [codeOf(id), greys[i]]));
  return pairs.filter(({ a, b }) => greyOf.get(a) === greyOf.get(b));
}
