import { describe, expect, it } from 'vitest';
import { newDesign } from '../../../shared/design/new-design.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { swatchDifferences } from '../../../shared/gauge/swatch-differences.ts';

const design = newDesign({ title: 'Any', columns: 40, rows: 50 });
const swatch: Swatch = { widthMm: 100, cords: 20, heightMm: 96, rows: 20, yarnMm: 1900, knots: 60 };
const differences = (swatches: Swatch[]) => swatchDifferences({ ...design, swatches });

describe('the differences of swatches', () => {
  it('need at least two', () => {
    expect(differences([])).toEqual([]);
    expect(differences([swatch])).toEqual([null]);
  });

  it('are none where they agree, however large each is', () => {
    const twice = { ...swatch, widthMm: 200, cords: 40, heightMm: 192, rows: 40, yarnMm: 3800, knots: 120 };
    for (const difference of differences([swatch, twice, swatch])) {
      expect(difference!.acrossShare).toBeCloseTo(0, 9);
      expect(difference!.downShare).toBeCloseTo(0, 9);
      expect(difference!.yarnShare).toBeCloseTo(0, 9);
    }
  });

  it('are told against the mean of all the others', () => {
    const tight = { ...swatch, widthMm: 96 };
    const [, second] = differences([swatch, tight, swatch]);
    expect(second!.acrossShare).toBeCloseTo(-0.04, 9);
    expect(second!.downShare).toBeCloseTo(0, 9);
    // Of the other two, the mean is the geometric one: sqrt(0.96).
    const [first] = differences([swatch, tight, swatch]);
    expect(first!.acrossShare).toBeCloseTo(1 / Math.sqrt(0.96) - 1, 9);
  });

  it('leave the yarn out where it was not measured', () => {
    const { yarnMm: _, knots: __, ...plain } = swatch;
    expect(differences([plain, swatch]).map((each) => each!.yarnShare)).toEqual([null, null]);
    expect(differences([plain, swatch, swatch])[1]!.yarnShare).toBeCloseTo(0, 9);
  });

  it('compare a swatch of thicker cord by what the model makes of it', () => {
    // p = D + 2 d x 0.5: 5 mm with a cord of 3 mm and a yarn of 2 mm, 6 mm with a cord of 4 mm.
    const thick = { ...swatch, widthMm: 120, cordDiameterMm: 4 };
    const [own] = differences([thick, { ...swatch, cordDiameterMm: 5, widthMm: 140 }]);
    expect(own!.acrossShare).toBeCloseTo(0, 9);
  });
});
