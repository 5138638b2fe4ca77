import { describe, expect, it } from 'vitest';
import { newDesign } from '../../shared/design/new-design.ts';
import { gaugeOf, knotMm } from '../../shared/gauge/gauge.ts';
import { buyingOf } from '../../shared/materials/buying.ts';
import { wholeSkeins, yarnMassG } from '../../shared/materials/skeins.ts';
import { mmPerYard } from '../../shared/units/length.ts';
import {
  ashenhurstEndsPerInch,
  diameterFromWrapsMm,
  leastDiameterMm,
  yardsPerPound,
  yarnCount,
} from '../../shared/units/yarn-count.ts';

describe('the fineness of yarn', () => {
  it('200 m in 100 g are 500 tex, 4500 denier and Nm 2', () => {
    // ISO 1144: tex = g/1000 m, denier = g/9000 m, Nm = m/g; the figures are derived from it.
    expect(yarnCount(200)).toEqual({ tex: 500, denier: 4500, nm: 2 });
  });

  it('425 yards in a quarter pound lie side by side at 37.1 ends per inch', () => {
    // Ashenhurst's rule, 0.9 sqrt(yards per pound): schoolofsweetgeorgia.com, peggyosterkamp.com; derived.
    expect(ashenhurstEndsPerInch(425 / 0.25)).toBeCloseTo(37.1, 1);
  });

  it('so such a yarn measures at least 0.68 mm', () => {
    // Derived from the same rule: 25.4 mm / 37.1.
    const metresPer100G = (1700 * mmPerYard) / 1000 / 4.5359237;
    expect(yardsPerPound(metresPer100G)).toBeCloseTo(1700, 6);
    expect(leastDiameterMm(metresPer100G)).toBeCloseTo(25.4 / 37.108, 4);
  });

  // 'What is WPI', ihookdesign.com; categories: Craft Yarn Council, Standard Yarn Weight System. Compiled tables
  // disagree; a measured diameter wins. Diameters are derived: 25.4 mm / WPI.
  it.each([
    ['3 Light', 15, 11, 1.69, 2.31],
    ['4 Medium', 12, 9, 2.12, 2.82],
    ['5 Bulky', 9, 6, 2.82, 4.23],
    ['6 Super Bulky', 6, 5, 4.23, 5.08],
  ])('%s, %i to %i wraps per inch, is %f to %f mm thick', (_, most, fewest, thin, thick) => {
    expect(diameterFromWrapsMm(most)).toBeCloseTo(thin, 2);
    expect(diameterFromWrapsMm(fewest)).toBeCloseTo(thick, 2);
  });

  it('the thickness of a new design is that of a medium yarn, and no less than its count allows', () => {
    // Medium: 120-200 m per 100 g, craftys.uk 'Yarn weight and WPI'. 2 mm: a value from memory.
    for (const { diameterMm, metresPer100G } of newDesign({ title: 'Any', columns: 1, rows: 1 }).yarns) {
      expect(metresPer100G).toBeGreaterThanOrEqual(120);
      expect(metresPer100G).toBeLessThanOrEqual(200);
      expect(diameterMm).toBeGreaterThan(leastDiameterMm(metresPer100G));
    }
  });
});

describe('how much yarn to buy', () => {
  it('1,312.5 yd at 186 yd a skein are 7.06 skeins, so 8: seven ran out', () => {
    // needlegirl.blogspot.com, May 2004.
    expect(1312.5 / 186).toBeCloseTo(7.06, 2);
    expect(wholeSkeins(1312.5 * mmPerYard, 186 * mmPerYard)).toBe(8);
    expect(wholeSkeins(7 * 186 * mmPerYard, 186 * mmPerYard)).toBe(7);
    // With the seven at home, one is still to be bought; and eight, where all is to be of one dye lot.
    expect(buyingOf(1312.5 * mmPerYard, 186 * mmPerYard, { ownedSkeins: 7 })).toEqual({
      ownedSkeins: 7,
      toBuySkeins: 1,
      oneLotSkeins: 8,
    });
  });

  it('where 10,000 stitches take 70 g, 130,800 take 915.6 g', () => {
    // getknitting.com 'Yarn quantity'. Stitches of another craft, but the same proportion: swatch to whole.
    const design = measured({ yarnMm: 400_000, knots: 10_000 });
    const yarn = design.yarns[0]!;
    const ofSwatch = { metresPer100G: 400 / 0.7 };
    expect(yarnMassG(400_000, ofSwatch)).toBeCloseTo(70, 9);
    expect(yarnMassG(130_800 * knotMm(design, yarn, gaugeOf(design)), ofSwatch)).toBeCloseTo(915.6, 6);
  });

  it('where 50 stitches take 100 cm, 18 x 120 = 2,160 take 43.2 m', () => {
    // louisetilbrookdesigns.net, 'meterage'.
    const design = measured({ yarnMm: 1000, knots: 50 });
    expect(18 * 120 * knotMm(design, design.yarns[0]!, gaugeOf(design))).toBeCloseTo(43_200, 6);
  });
});

/** A design whose swatch took that much yarn. */
function measured(used: { yarnMm: number; knots: number }) {
  const design = newDesign({ title: 'Swatch', columns: 10, rows: 10 });
  return { ...design, swatches: [{ widthMm: 100, cords: 20, heightMm: 100, rows: 21, ...used }] };
}
