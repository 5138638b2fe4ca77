/** The dowel: how long it must be, and what it weighs. */
import type { Design } from '../design/design.ts';
import type { Materials } from '../materials/materials.ts';
import type { Gauge } from './gauge.ts';

/** At least the width of the hanging and an overhang at both sides. */
export function dowelOf(
  { columns, dowel }: Pick<Design, 'columns' | 'dowel'>,
  { pitchMm }: Pick<Gauge, 'pitchMm'>,
): Omit<Materials['dowel'], 'uncertain'> {
  const { diameterMm, overhangMm } = dowel;
  return { diameterMm, overhangMm, minLengthMm: columns * pitchMm + 2 * overhangMm };
}

/** Mass in g of a round rod of that length. */
export function dowelMassG({ diameterMm, gPerCm3 }: Design['dowel'], lengthMm: number): number {
  const volumeMm3 = Math.PI * (diameterMm / 2) ** 2 * lengthMm;
  return (volumeMm3 / 1000) * gPerCm3;
}
