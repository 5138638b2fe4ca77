import { describe, expect, it } from 'vitest';
import { limits } from '../../../shared/design/limits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { swatchSchema } from '../../../shared/design/schema.ts';
import { cordsForWidth, gaugeOf, knotMm, rowsForHeight, sizeOf } from '../../../shared/gauge/gauge.ts';
import { gaugeFromPer10Cm } from '../../../shared/gauge/gauge-from-per-10-cm.ts';

const design = newDesign({ title: 'Any', columns: 40, rows: 50 });

describe('the gauge', () => {
  it('follows the ground where nothing was measured, whatever the other yarns are', () => {
    const [ground, ...others] = design.yarns;
    const thick = others.map((yarn) => ({ ...yarn, diameterMm: 9 }));
    expect(gaugeOf({ ...design, yarns: [...thick, ground!] })).toEqual(gaugeOf(design));
    const thin = gaugeOf({ ...design, yarns: [{ ...ground!, diameterMm: 1 }, ...others] });
    expect([thin.pitchMm, thin.rowHeightMm]).toEqual([4, 2.4]);
  });

  it('is that of the swatch', () => {
    const swatches = [{ widthMm: 96, cords: 20, heightMm: 102, rows: 25 }];
    expect(gaugeOf({ ...design, swatches })).toMatchObject({
      pitchMm: 4.8,
      rowHeightMm: 4.08,
      source: 'measured',
      yarnFactor: 1,
      yarnFactorSource: 'estimate',
    });
  });

  it('counts each swatch once, however large: hands differ from swatch to swatch, not from cord to cord', () => {
    const swatches = [
      { widthMm: 50, cords: 10, heightMm: 50, rows: 10 },
      { widthMm: 220, cords: 40, heightMm: 180, rows: 40 },
    ];
    const { pitchMm, rowHeightMm } = gaugeOf({ ...design, swatches });
    expect(pitchMm).toBeCloseTo(Math.sqrt(5 * 5.5), 9);
    expect(rowHeightMm).toBeCloseTo(Math.sqrt(5 * 4.5), 9);
  });

  it('gives back the yarn per knot that was measured, for the ground', () => {
    const swatches = [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: 16_000, knots: 400 }];
    const gauge = gaugeOf({ ...design, swatches });
    expect(gauge.yarnFactorSource).toBe('measured');
    expect(knotMm(design, design.yarns[0]!, gauge)).toBeCloseTo(40, 9);
    expect(knotMm(design, { diameterMm: 3 }, gauge)).toBeGreaterThan(40);
  });

  it('never takes less yarn for a knot than the way to the next cord', () => {
    const swatches = [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: 1, knots: 400 }];
    const gauge = gaugeOf({ ...design, swatches });
    expect(gauge.yarnFactor).toBe(0);
    expect(knotMm(design, design.yarns[0]!, gauge)).toBe(5);
  });

  it('is loud about a design whose ground is missing', () => {
    expect(() => gaugeOf({ ...design, ground: 'y64' })).toThrow('y64');
  });
});

describe('a gauge known as counts in 10 cm', () => {
  it.each([
    [20, 20.8],
    [19.9, 33.3],
    [1, 0.5],
    [100, 200],
    [200, 200],
    [150.3, 199.9],
  ])('of %f knots and %f rows is kept as a swatch', (knots, rows) => {
    const swatch = gaugeFromPer10Cm(knots, rows);
    expect(swatchSchema.safeParse(swatch).success).toBe(true);
    const gauge = gaugeOf({ ...design, swatches: [swatch] });
    expect(100 / gauge.pitchMm).toBeCloseTo(knots, 9);
    expect(100 / gauge.rowHeightMm).toBeCloseTo(rows, 9);
  });

  it('keeps to the limits of a swatch, just at them and just beyond', () => {
    expect(gaugeFromPer10Cm(100, 200)).toEqual({ widthMm: 1000, cords: 1000, heightMm: 1000, rows: 2000 });
    const beyond = gaugeFromPer10Cm(100.1, 200.1);
    expect([beyond.cords, beyond.rows]).toEqual([limits.columns, limits.rows]);
    expect([beyond.widthMm, beyond.heightMm].every((mm) => mm < 1000)).toBe(true);
  });
});

describe('the size', () => {
  it('is cords by pitch, rows by row height, and the longest fringe', () => {
    const fringe = { shape: 'v' as const, longMm: 160, shortMm: 80 };
    expect(sizeOf({ ...design, fringe }, { pitchMm: 5, rowHeightMm: 4.8 })).toEqual({
      widthMm: 200,
      knottedHeightMm: 240,
      heightWithFringeMm: 400,
    });
  });

  it('asks for the nearest whole cords and rows, at least one', () => {
    expect(cordsForWidth(202, { pitchMm: 5 })).toBe(40);
    expect(cordsForWidth(203, { pitchMm: 5 })).toBe(41);
    expect(cordsForWidth(0.1, { pitchMm: 5 })).toBe(1);
    expect(rowsForHeight(240, { rowHeightMm: 4.8 })).toBe(50);
    expect(rowsForHeight(0, { rowHeightMm: 4.8 })).toBe(1);
  });
});
