/** The lark's heads on the dowel: how wide they are, and whether they need more room than the picture below them. */
import type { Design } from '../design/design.ts';
import type { Gauge } from './gauge.ts';

/** A lark's head is about four cords wide: a value from memory, to be measured. */
const headInCords = 4;

export interface Heads {
  /** Of one head. */
  readonly headWidthMm: number;
  /** Of all of them side by side. */
  readonly allMm: number;
  /** A head is wider than its two columns: the heads spread on the dowel, and the cords fan in to the first row. */
  readonly spread: boolean;
}

export function headsOf(
  { columns, cord }: Pick<Design, 'columns' | 'cord'>,
  { pitchMm }: Pick<Gauge, 'pitchMm'>,
): Heads {
  const headWidthMm = headInCords * cord.diameterMm;
  return {
    headWidthMm,
    allMm: Math.ceil(columns / 2) * headWidthMm,
    spread: headWidthMm > 2 * pitchMm,
  };
}
