/** The dowel: how long it must be, and what it weighs. */
import type { Design } from '../design/design.ts';
import type { Materials } from '../materials/materials.ts';
import type { Gauge } from './gauge.ts';
import { headsOf } from './heads.ts';

type Hung = Pick<Design, 'columns' | 'cord' | 'dowel'>;
type Pitch = Pick<Gauge, 'pitchMm'>;

/** What hangs on it, whichever is wider, and an overhang at both sides. */
export function dowelOf(design: Hung, gauge: Pitch): Omit<Materials['dowel'], 'uncertain'> {
  const { diameterMm, overhangMm } = design.dowel;
  return { diameterMm, overhangMm, minLengthMm: hungMm(design, gauge) + 2 * overhangMm };
}

/** How much of the dowel the hanging takes, in mm: the width of the picture, or of its lark's heads where that is more. */
export function hungMm(design: Pick<Hung, 'columns' | 'cord'>, gauge: Pitch): number {
  return Math.max(design.columns * gauge.pitchMm, headsOf(design, gauge).allMm);
}

/** Mass in g of a round rod of that length. */
export function dowelMassG({ diameterMm, gPerCm3 }: Design['dowel'], lengthMm: number): number {
  const volumeMm3 = Math.PI * (diameterMm / 2) ** 2 * lengthMm;
  return (volumeMm3 / 1000) * gPerCm3;
}
