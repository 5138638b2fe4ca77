/**
 * How sure the figures are that follow from the gauge. Pitch, row height, yarn per knot and take-up are fitted each by
 * itself; so each is taken to both ends of its interval while the others stay, and the figure is computed anew. The
 * differences add up as squares do: the numerical form of the law of propagation, JCGM 100:2008 (Guide to the
 * expression of uncertainty in measurement), 5.1.3, note 2.
 *
 * A figure computed so from all its knots together errs for all of them alike: a hand that ties tightly ties tightly
 * everywhere, and nothing averages out over knots, rows or pieces.
 */
import { type Uncertain, uncertain } from '../units/uncertain.ts';
import { type Fit, fitSwatches, type Measured, type SwatchFit } from './fit-swatches.ts';
import { type Gauge, type GaugeValues, gaugeFrom, gaugeOf } from './gauge.ts';

export interface GaugeSpread {
  readonly gauge: Gauge;
  readonly fit: SwatchFit;
  /** For each fitted quantity, the gauge with it at its low and at its high end. */
  readonly ends: readonly { readonly low: Gauge; readonly high: Gauge }[];
}

export function gaugeSpread(design: Measured): GaugeSpread {
  const fit = fitSwatches(design);
  const gauge = gaugeOf(design);
  const knot: [keyof GaugeValues, Fit] = fit.knotMm ? ['knotMm', fit.knotMm] : ['yarnFactor', fit.yarnFactor];
  const quantities: [keyof GaugeValues, Fit][] = [
    ['pitchMm', fit.pitchMm],
    ['rowHeightMm', fit.rowHeightMm],
    knot,
    ['takeUp', fit.takeUp],
  ];
  const { thickness, knotMm } = fit;
  const values: GaugeValues = { ...gauge, thickness, knotMm: knotMm?.value ?? null };
  const ends = quantities.map(([name, { low, high }]) => ({
    low: gaugeFrom({ ...values, [name]: low }),
    high: gaugeFrom({ ...values, [name]: high }),
  }));
  return { gauge, fit, ends };
}

/** The 95 % interval of a figure that follows from the gauge: a length or a count, so it never reaches below 0. */
export function spreadOf(
  { gauge, ends }: Pick<GaugeSpread, 'gauge' | 'ends'>,
  figure: (gauge: Gauge) => number,
): Uncertain {
  const value = figure(gauge);
  let below = 0;
  let above = 0;
  for (const { low, high } of ends) {
    const both = [figure(low), figure(high)];
    below = Math.hypot(below, Math.max(0, value - Math.min(...both)));
    above = Math.hypot(above, Math.max(0, Math.max(...both) - value));
  }
  return uncertain(value, Math.max(0, value - below), value + above);
}
