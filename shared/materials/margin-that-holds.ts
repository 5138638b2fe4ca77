/** How large a margin would have to be for a hand looser than the gauge. */
import { wholeSteps } from '../units/round.ts';
import type { YarnNeed } from './materials.ts';

/**
 * The least margin, in whole per cent as a share, with which the skeins of every yarn hold what the loosest hand that the
 * swatches leave open cuts of it (`ifLoose`). Null where the skeins that are bought anyway hold that.
 */
export function marginThatHolds(
  yarns: readonly Pick<YarnNeed, 'cutMm' | 'skeins' | 'ifLoose'>[],
): number | null {
  const short = yarns.filter(({ skeins, ifLoose }) => ifLoose.skeins > skeins);
  if (short.length === 0) return null;
  const share = Math.max(...short.map(({ cutMm, ifLoose }) => ifLoose.cutMm / cutMm - 1));
  return wholeSteps(share, 0.01, { enough: true }) / 100;
}
