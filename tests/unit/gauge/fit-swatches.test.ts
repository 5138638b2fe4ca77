import { describe, expect, it } from 'vitest';
import type { Design } from '../../../shared/design/design.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { basisSentence } from '../../../shared/gauge/basis-sentence.ts';
import { fitSwatches } from '../../../shared/gauge/fit-swatches.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { gaugeFromPer10Cm } from '../../../shared/gauge/gauge-from-per-10-cm.ts';

const design = newDesign({ title: 'Any', columns: 40, rows: 50 });
const swatch: Swatch = { widthMm: 100, cords: 20, heightMm: 96, rows: 20 };
const fitOf = (swatches: Swatch[], change: Partial<Design> = {}) =>
  fitSwatches({ ...design, swatches, ...change });
const sayOf = (swatches: Swatch[]) => basisSentence(fitOf(swatches).size);

describe('what swatches tell', () => {
  it('is an estimate where there is none: 1.96 times 10 % to both sides', () => {
    const { pitchMm, size, knotMm, yarnFactor } = fitOf([]);
    expect(pitchMm.value).toBe(5);
    expect(pitchMm.high / pitchMm.value).toBeCloseTo(Math.exp(0.196), 4);
    expect(size).toEqual({ from: 'estimate', swatches: 0, scatter: null });
    expect(knotMm).toBeNull();
    expect(yarnFactor.value).toBe(1);
    expect(sayOf([])).toBe('An estimate, not yet measured; its ± is a value from memory. Tie a swatch.');
  });

  it('is taken at a scatter from memory where there is one', () => {
    const { pitchMm, size } = fitOf([swatch]);
    expect(pitchMm.value).toBe(5);
    expect(pitchMm.high / 5).toBeCloseTo(Math.exp(0.0294), 4);
    expect(size.scatter).toMatchObject({ share: 0.015, from: 'prior' });
    expect(sayOf([swatch])).toBe(
      'Measured on one swatch; that swatches scatter by 1.5 % is a value from memory.',
    );
  });

  it('shows its own scatter where there are several', () => {
    const swatches = [0.97, 1, 1.03].map((times) => ({ ...swatch, widthMm: 100 * times }));
    const { size } = fitOf(swatches);
    // Squares of ln 0.97, ln 1 and ln 1.03 around their mean, 0.00180; the heights agree; 3 degrees of the prior.
    expect(size.scatter).toMatchObject({ from: 'swatches' });
    expect(size.scatter!.share).toBeCloseTo(Math.sqrt((3 * 0.015 ** 2 + 0.0018) / (3 + 4)), 4);
    expect(sayOf(swatches)).toBe('Measured on 3 swatches; they scatter by 1.9 %.');
  });

  it('is surer with each swatch that agrees', () => {
    const widths = [1, 2, 3, 6].map((count) => {
      const { low, high } = fitOf(Array(count).fill(swatch)).pitchMm;
      return high - low;
    });
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
  });

  it('weighs a gauge that was told in counts to 10 cm as one swatch, though it is a metre long', () => {
    const told = gaugeFromPer10Cm(18, 20);
    const { pitchMm } = fitOf([told, swatch]);
    expect(pitchMm.value).toBeCloseTo(Math.sqrt(5 * (1000 / 180)), 9);
  });

  it('of yarn is told by the swatches that measured it alone', () => {
    const measured = { ...swatch, yarnMm: 16_000, knots: 400 };
    const { knotMm, yarn, size } = fitOf([swatch, measured]);
    expect(knotMm!.value).toBeCloseTo(40, 9);
    expect([yarn.swatches, size.swatches]).toEqual([1, 2]);
  });

  it('of take-up replaces what was typed', () => {
    expect(gaugeOf(design)).toMatchObject({ takeUp: 0.03, takeUpSource: 'estimate' });
    const measured = { ...swatch, cordBeforeMm: 84, cordAfterMm: 80 };
    const gauge = gaugeOf({ ...design, swatches: [measured] });
    expect(gauge.takeUp).toBeCloseTo(0.05, 9);
    expect(gauge.takeUpSource).toBe('measured');
    const { takeUp } = fitOf([{ ...swatch, cordBeforeMm: 78, cordAfterMm: 80 }]);
    expect([takeUp.low, takeUp.value]).toEqual([0, 0]);
    expect(takeUp.high).toBeLessThan(0.01);
  });
});

describe('a swatch of another thickness', () => {
  const thick = { ...swatch, cordDiameterMm: 5, yarnDiameterMm: 2, yarnMm: 20_000, knots: 400 };

  it('is changed by what the model says of the two thicknesses, and is an estimate', () => {
    const { pitchMm, size } = fitOf([thick]);
    // 5 mm a cord where the model says 7, so 5 x 5 / 7 where it says 5.
    expect(pitchMm.value).toBeCloseTo(25 / 7, 9);
    expect(Math.log(pitchMm.high / pitchMm.value) / 1.96).toBeCloseTo(
      Math.hypot(0.015, 0.25 * Math.log(7 / 5)),
      5,
    );
    expect(size).toMatchObject({ from: 'other-thickness', swatches: 1 });
    expect(gaugeOf({ ...design, swatches: [thick] }).source).toBe('estimate');
    expect(sayOf([thick])).toContain('Tie a swatch with this cord and yarn.');
  });

  it('no longer counts when one is tied with this cord and yarn', () => {
    expect(fitOf([thick, swatch]).pitchMm).toEqual(fitOf([swatch]).pitchMm);
  });

  it('counts as any other where the hanging is of that thickness', () => {
    const { pitchMm, size } = fitOf([thick], { cord: { ...design.cord, diameterMm: 5 } });
    expect(pitchMm.value).toBe(5);
    expect(size.from).toBe('swatches');
  });
});
