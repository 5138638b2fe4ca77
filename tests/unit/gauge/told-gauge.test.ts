/** A gauge that the maker writes down without a swatch, beside swatches that were measured. */
import { describe, expect, it } from 'vitest';
import { limits } from '../../../shared/design/limits.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { basisSentence } from '../../../shared/gauge/basis-sentence.ts';
import { fitSwatches } from '../../../shared/gauge/fit-swatches.ts';
import { gaugeOf, knotMm } from '../../../shared/gauge/gauge.ts';
import { graded } from '../../../shared/gauge/graded.ts';
import { swatchDifferences } from '../../../shared/gauge/swatch-differences.ts';
import {
  hasRoomForTold,
  measuredSwatches,
  toldGauge,
  withToldGauge,
} from '../../../shared/gauge/told-gauge.ts';
import { designFromLetters } from '../../notation.ts';

const measured: Swatch = {
  widthMm: 100,
  cords: 20,
  heightMm: 100,
  rows: 21,
  yarnMm: 4000,
  knots: 100,
  cordBeforeMm: 104,
  cordAfterMm: 100,
};
const other: Swatch = { ...measured, widthMm: 102 };
const design = designFromLetters(['abab', 'baba'], { swatches: [measured, other] });
const told = { ...design, swatches: withToldGauge(design.swatches, 18, 22) };

describe('a gauge that is told', () => {
  it('gives the size, and is no measurement', () => {
    const gauge = gaugeOf(told);
    expect(100 / gauge.pitchMm).toBeCloseTo(18, 9);
    expect(100 / gauge.rowHeightMm).toBeCloseTo(22, 9);
    expect(gauge.source).toBe('estimate');
    const { size } = fitSwatches(told);
    expect(size.from).toBe('told');
    expect(basisSentence(size)).toContain('As you wrote it, not measured');
  });

  it('leaves every swatch as it was measured, and taking it away brings their gauge back', () => {
    expect(measuredSwatches(told.swatches)).toEqual(design.swatches);
    expect(gaugeOf({ ...told, swatches: measuredSwatches(told.swatches) })).toEqual(gaugeOf(design));
  });

  it('is told once: another takes its place', () => {
    const again = withToldGauge(told.swatches, 17, 20);
    expect(again.filter(({ told }) => told)).toEqual([toldGauge(again)]);
    expect(again).toHaveLength(3);
  });

  it('is less sure than one swatch, and surer than an estimate', () => {
    const width = (swatches: readonly Swatch[]) => {
      const { low, high } = fitSwatches({ ...design, swatches: [...swatches] }).pitchMm;
      return high / low;
    };
    const told = withToldGauge([], 18, 22);
    expect(width(told)).toBeGreaterThan(width([measured]));
    expect(width(told)).toBeLessThan(width([]));
  });

  it('takes the yarn of a knot by the hand that was measured: the same k, and the same take-up of cord', () => {
    expect(gaugeOf(told).yarnFactor).toBeCloseTo(gaugeOf(design).yarnFactor, 9);
    expect(gaugeOf(told).yarnFactorSource).toBe('measured');
    expect(gaugeOf(told).takeUp).toBe(gaugeOf(design).takeUp);
    const [ground] = design.yarns;
    const fit = fitSwatches(told).knotMm!;
    expect(fit.value).toBeCloseTo(knotMm(told, ground!, gaugeOf(told)), 9);
  });

  it('is none of the swatches that are compared with one another', () => {
    expect(swatchDifferences(told).slice(0, 2)).toEqual(swatchDifferences(design));
    expect(swatchDifferences(told)[2]).toBeNull();
  });

  it('holds for the cord and yarn that it was told for, and for no others', () => {
    const thick = graded(told, { cordDiameterMm: 5, yarnDiameterMm: 3 });
    if (!thick.ok) throw new Error(thick.problem.sentence);
    expect(toldGauge(thick.value.swatches)).not.toBeNull();
    expect(fitSwatches(thick.value).size.from).toBe('other-thickness');
    const back = graded(thick.value, { cordDiameterMm: 3, yarnDiameterMm: 2 });
    if (!back.ok) throw new Error(back.problem.sentence);
    expect(fitSwatches(back.value).size.from).toBe('told');
  });

  it('has room where there is one swatch fewer than a design holds', () => {
    const many = (count: number) => Array<Swatch>(count).fill(measured);
    expect(hasRoomForTold(many(limits.swatches - 1))).toBe(true);
    expect(hasRoomForTold(many(limits.swatches))).toBe(false);
    expect(hasRoomForTold(withToldGauge(many(limits.swatches - 1), 18, 22))).toBe(true);
  });
});
