import { describe, expect, it } from 'vitest';
import { newDesign } from '../../../shared/design/new-design.ts';
import { dowelOf, dowelSpread } from '../../../shared/gauge/dowel.ts';
import { fittingDowel } from '../../../shared/gauge/fitting-dowel.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { gaugeSpread, spreadOf } from '../../../shared/gauge/gauge-spread.ts';
import { nominalDowels } from '../../../shared/gauge/nominal-dowels.ts';

const any = newDesign({ title: 'Any', columns: 48, rows: 10 });

/** 48 cords of 5 mm: 24 cm, and 5.1 cm at each end; thin cord, whose heads are no wider. */
const design = {
  ...any,
  cord: { ...any.cord, diameterMm: 2 },
  swatches: [{ widthMm: 100, cords: 20, heightMm: 96, rows: 20 }],
};

describe('choosing a dowel', () => {
  it('finds the shortest that carries the hanging, and the one that surely does', () => {
    expect(fittingDowel([600, 300, 400, 345], design)).toMatchObject({
      shortestMm: 345,
      shortestSurelyMm: 400,
    });
    expect(fittingDowel([300], design)).toMatchObject({ shortestMm: null, shortestSurelyMm: null });
  });

  it('tells how many cords fit on each, and what is left free at the ends', () => {
    const [short, long] = fittingDowel([400, 300], design).choices;
    expect(short).toMatchObject({ lengthMm: 300, cords: 39, widthMm: 195, fits: false, endsMm: 30 });
    expect(long).toMatchObject({ lengthMm: 400, cords: 59, cordsSurely: 57, fits: true, endsMm: 80 });
  });

  it('takes one that is just long enough, and none that is a tenth too short', () => {
    const { minLengthMm } = dowelOf(design, gaugeOf(design));
    expect(minLengthMm).toBe(342);
    expect(fittingDowel([342], design).shortestMm).toBe(342);
    expect(fittingDowel([341.9], design).shortestMm).toBeNull();
    expect(fittingDowel([342], design).choices[0]!.cords).toBe(48);
  });

  it('asks whether the lark’s heads fit too, which may be wider than the picture', () => {
    // Heads of 14 mm over two cords of 5 mm: 24 of them take 33.6 cm.
    const thick = { ...design, cord: { ...any.cord, diameterMm: 3.5 } };
    expect(fittingDowel([400, 438, 500], thick)).toMatchObject({
      shortestMm: 438,
      choices: [{ cords: 42, fits: false, endsMm: 32 }, { cords: 48 }, { cords: 56, endsMm: 82 }],
    });
  });

  it('is as sure of the heads as their width is known, which is from memory', () => {
    // 24 heads of 14 mm, give or take a tenth: 33.6 cm ± 3.4 cm, which is 8 % of the 43.8 cm of the dowel.
    const thick = { ...design, cord: { ...any.cord, diameterMm: 3.5 } };
    const { value, low, high } = dowelSpread(thick, gaugeSpread(thick));
    expect(value).toBe(438);
    expect(high - value).toBeCloseTo(33.6, 6);
    expect(value - low).toBeCloseTo(33.6, 6);
    const [dowel] = fittingDowel([500], thick).choices;
    expect(dowel).toMatchObject({ cords: 56, cordsSurely: 50 });
    // Heads narrower than their two cords, even at their widest, add nothing to what the gauge leaves open.
    expect(dowelSpread(design, gaugeSpread(design))).toEqual(
      spreadOf(gaugeSpread(design), (gauge) => dowelOf(design, gauge).minLengthMm),
    );
  });

  it('finds no room between overhangs that meet', () => {
    expect(fittingDowel([60], design).choices[0]).toMatchObject({ cords: 0, widthMm: 0, fits: false });
  });

  it('knows what shops have', () => {
    expect(fittingDowel(nominalDowels.metric.lengthsMm, design).shortestMm).toBe(400);
    expect(fittingDowel(nominalDowels.us.lengthsMm, design).shortestMm).toBeCloseTo(16 * 25.4, 9);
    for (const { lengthsMm, diametersMm } of Object.values(nominalDowels)) {
      for (const list of [lengthsMm, diametersMm]) expect(list).toEqual(list.toSorted((a, b) => a - b));
    }
  });
});
