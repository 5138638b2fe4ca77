/** What is owned against what is needed, and what to buy. */
import type { Yarn } from '../design/schema.ts';
import { wholeSkeins } from './skeins.ts';

export interface Buying {
  /** Skeins at home, whole or begun; null: not told. */
  ownedSkeins: number | null;
  /** Whole skeins to buy beside those at home; all of them where it is not told what is at home. */
  toBuySkeins: number;
  /**
   * Whole skeins to buy where the whole need is to be of one dye lot and what is at home is not enough: a later skein
   * may be of another lot. 0 where it is enough.
   */
  oneLotSkeins: number;
}

/** `needMm`: with its margin. */
export function buyingOf(
  needMm: number,
  skeinMm: number,
  { ownedSkeins }: Pick<Yarn, 'ownedSkeins'>,
): Buying {
  const missingMm = Math.max(0, needMm - (ownedSkeins ?? 0) * skeinMm);
  const toBuySkeins = wholeSkeins(missingMm, skeinMm);
  return {
    ownedSkeins: ownedSkeins ?? null,
    toBuySkeins,
    oneLotSkeins: toBuySkeins === 0 ? 0 : wholeSkeins(needMm, skeinMm),
  };
}
