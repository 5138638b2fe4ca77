import { describe, expect, it } from 'vitest';
import { newDesign } from '../../../shared/design/new-design.ts';
import { cutList } from '../../../shared/gauge/cords.ts';
import { knotMm, sizeOf } from '../../../shared/gauge/gauge.ts';
import { gaugeSpread, spreadOf } from '../../../shared/gauge/gauge-spread.ts';

const design = {
  ...newDesign({ title: 'Any', columns: 40, rows: 50 }),
  swatches: [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: 16_000, knots: 400 }],
};
const spread = gaugeSpread(design);

describe('how sure a figure is', () => {
  it('is told of the width as of the pitch: all cords err alike', () => {
    const width = spreadOf(spread, (gauge) => sizeOf(design, gauge).widthMm);
    expect(width.value).toBe(200);
    expect(width.high).toBeCloseTo(200 * Math.exp(0.0294), 2);
    expect(width.share).toBeCloseTo(0.0294, 4);
  });

  it('of a knot of the ground is that of the yarn measured, whatever the pitch', () => {
    const knot = spreadOf(spread, (gauge) => knotMm(design, design.yarns[0]!, gauge));
    expect(knot.value).toBeCloseTo(40, 9);
    expect(knot.share).toBeCloseTo(0.0294, 3);
  });

  it('adds up what is independent as squares', () => {
    const both = spreadOf(spread, ({ pitchMm, rowHeightMm }) => pitchMm + rowHeightMm);
    const pitchHalf = 5 * Math.expm1(0.029399);
    const rowHalf = 4.8 * Math.expm1(0.029399);
    expect(both.high - both.value).toBeCloseTo(Math.hypot(pitchHalf, rowHalf), 4);
  });

  it('is nothing where the gauge decides nothing', () => {
    expect(spreadOf(spread, () => 7)).toEqual({ value: 7, low: 7, high: 7, share: 0 });
    expect(spreadOf(spread, () => 0).share).toBe(0);
  });

  it('of the cord knows of the row height and of the take-up', () => {
    const fine = { ...design, cord: { ...design.cord, roundUpMm: 0.001 } };
    const cord = spreadOf(gaugeSpread(fine), (gauge) => cutList(fine, gauge).totalMm);
    // 40 legs of 240 mm: 2.94 % of the knotted height, and another 2.94 % of it for take-up of 3 % from memory.
    expect(cord.high - cord.value).toBeCloseTo(40 * 240 * 1.03 * Math.hypot(0.0298, 0.0298), -1);
    expect(cord.low).toBeLessThan(cord.value);
  });
});
