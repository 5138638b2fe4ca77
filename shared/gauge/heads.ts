/** The lark's heads on the dowel: how wide they are, and whether they need more room than the picture below them. */
import type { Design } from '../design/design.ts';
import type { Gauge } from './gauge.ts';

/** How wide a lark's head is, in thicknesses of its cord, and within what: values from memory, to be measured. */
export const headInCords = { value: 4, low: 3.6, high: 4.4 } as const;

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
  inCords: number = headInCords.value,
): Heads {
  const headWidthMm = inCords * cord.diameterMm;
  return {
    headWidthMm,
    allMm: Math.ceil(columns / 2) * headWidthMm,
    spread: headWidthMm > 2 * pitchMm,
  };
}
