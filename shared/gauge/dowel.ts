/** The dowel: how long it must be, and what it weighs. */
import type { Design } from '../design/design.ts';
import type { Materials } from '../materials/materials.ts';
import { type Uncertain, uncertain } from '../units/uncertain.ts';
import type { Gauge } from './gauge.ts';
import { type GaugeSpread, spreadOf } from './gauge-spread.ts';
import { headInCords, headsOf } from './heads.ts';

type Hung = Pick<Design, 'columns' | 'cord' | 'dowel'>;
type Pitch = Pick<Gauge, 'pitchMm'>;

/** What hangs on it, whichever is wider, and an overhang at both sides. */
export function dowelOf(
  design: Hung,
  gauge: Pitch,
  inCords: number = headInCords.value,
): Omit<Materials['dowel'], 'uncertain'> {
  const { diameterMm, overhangMm } = design.dowel;
  return { diameterMm, overhangMm, minLengthMm: hungMm(design, gauge, inCords) + 2 * overhangMm };
}

/**
 * How sure the least length is, in mm: as sure as the gauge, and as what a lark's head takes, which the two add up to as
 * squares do (see `gauge-spread.ts`).
 */
export function dowelSpread(design: Hung, spread: GaugeSpread): Uncertain {
  const byGauge = spreadOf(spread, (at) => dowelOf(design, at).minLengthMm);
  const { value } = byGauge;
  const withHeads = (inCords: number) => dowelOf(design, spread.gauge, inCords).minLengthMm;
  return uncertain(
    value,
    value - Math.hypot(value - byGauge.low, value - withHeads(headInCords.low)),
    value + Math.hypot(byGauge.high - value, withHeads(headInCords.high) - value),
  );
}

/** How much of the dowel the hanging takes, in mm: the width of the picture, or of its lark's heads where that is more. */
export function hungMm(
  design: Pick<Hung, 'columns' | 'cord'>,
  gauge: Pitch,
  inCords: number = headInCords.value,
): number {
  return Math.max(design.columns * gauge.pitchMm, headsOf(design, gauge, inCords).allMm);
}

/** Mass in g of a round rod of that length. */
export function dowelMassG({ diameterMm, gPerCm3 }: Design['dowel'], lengthMm: number): number {
  const volumeMm3 = Math.PI * (diameterMm / 2) ** 2 * lengthMm;
  return (volumeMm3 / 1000) * gPerCm3;
}
