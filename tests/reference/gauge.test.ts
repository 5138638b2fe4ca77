import { describe, expect, it } from 'vitest';
import { newDesign } from '../../shared/design/new-design.ts';
import { cordsForWidth, type Gauge, gaugeOf, knotMm } from '../../shared/gauge/gauge.ts';
import { tQuantile95 } from '../../shared/gauge/t-quantile.ts';

const plain = newDesign({ title: 'Any', columns: 40, rows: 48 });

describe('yarn in a knot', () => {
  // Length of a coil, L = N sqrt((pi D)^2 + P^2): 'Finding the Length of a Coil', mathforum.org, Dr. Math 55156; the
  // figures for two turns at a turn pitch of one yarn, without the way to the next cord, are derived from it.
  it.each([
    [3, 31.67],
    [4, 37.91],
    [5, 44.16],
  ])('two turns of 2 mm yarn around a %i mm cord take %f mm', (cordMm, turnsMm) => {
    const design = { ...plain, cord: { ...plain.cord, diameterMm: cordMm } };
    const gauge: Gauge = { ...gaugeOf(design), pitchMm: 0, rowHeightMm: 4, yarnFactor: 1 };
    expect(knotMm(design, { diameterMm: 2 }, gauge)).toBeCloseTo(turnsMm, 2);
  });

  it('is two half hitches, so two turns: twice the coil of one', () => {
    // A clove hitch is two half hitches around an object: The Ashley Book of Knots, nos. 11, 1176-1180.
    const gauge: Gauge = { ...gaugeOf(plain), pitchMm: 0 };
    const oneTurnMm = Math.sqrt((Math.PI * 5) ** 2 + (gauge.rowHeightMm / 2) ** 2);
    expect(knotMm(plain, { diameterMm: 2 }, gauge)).toBeCloseTo(2 * oneTurnMm, 9);
  });
});

describe('the gauge without a swatch', () => {
  it('is 5.0 mm a cord and 4.8 mm a row for 3 mm cord and 2 mm yarn', () => {
    // p = D + 2 d x 0.5, h = 2 x 2 d x 0.6: compressions are values from memory, to be measured.
    const gauge = gaugeOf(plain);
    expect(gauge.pitchMm).toBeCloseTo(5.0, 9);
    expect(gauge.rowHeightMm).toBeCloseTo(4.8, 9);
    expect([gauge.source, gauge.yarnFactor, gauge.yarnFactorSource]).toEqual(['estimate', 1, 'estimate']);
  });
});

describe("Student's t", () => {
  // Student 1908, 'The probable error of a mean', Biometrika 6; the two-sided 95 % column of the published tables,
  // for example NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
  it.each([
    [4, 2.776],
    [5, 2.571],
    [6, 2.447],
    [8, 2.306],
    [10, 2.228],
    [15, 2.131],
    [20, 2.086],
    [30, 2.042],
    [60, 2.0],
    [120, 1.98],
  ])('with %i degrees of freedom holds 95 %% within %f standard errors', (degrees, published) => {
    expect(Math.abs(tQuantile95(degrees) - published)).toBeLessThan(0.001);
  });

  it('comes down to the normal 1.960, and is not asked where its series does not hold', () => {
    expect(tQuantile95(1e9)).toBeCloseTo(1.96, 4);
    expect(() => tQuantile95(3)).toThrow('4 degrees');
  });
});

describe('cords for a width', () => {
  it('45 cm at 0.9 cm a cord are 50 cords', () => {
    // 'How to calculate the length of cord', perlesandco.co.uk, resource 27381.
    expect(cordsForWidth(450, { pitchMm: 9 })).toBe(50);
  });
});
