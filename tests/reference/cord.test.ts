import { describe, expect, it } from 'vitest';
import type { Design } from '../../shared/design/design.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { cutList } from '../../shared/gauge/cords.ts';
import { dowelOf } from '../../shared/gauge/dowel.ts';
import { gaugeOf } from '../../shared/gauge/gauge.ts';

function hanging(columns: number, rows: number): Design {
  return newDesign({ title: 'Any', columns, rows });
}

/** The hanging with a straight fringe that makes each leg `legMm` long, cut to the mm. */
function withLegs(design: Design, legMm: number): Design {
  const { mountPerLegMm } = cutList(design, gaugeOf(design));
  const knottedMm = design.rows * gaugeOf(design).rowHeightMm * (1 + design.cord.takeUp);
  const longMm = legMm - mountPerLegMm - knottedMm - design.cord.trimMm;
  return {
    ...design,
    cord: { ...design.cord, roundUpMm: 1 },
    fringe: { shape: 'straight', longMm, shortMm: longMm },
  };
}

describe('cut cords of published pieces', () => {
  it('a picture of 54 x 70 hangs on 27 cut cords of 1.5 m, with legs of 0.75 m', () => {
    // 'Robot Macrame Wall Hanging', a step-by-step instruction on a public makers' site.
    const design = withLegs(hanging(54, 70), 750);
    const { cutCords, groups, spareLegs } = cutList(design, gaugeOf(design));
    expect(cutCords).toBe(27);
    expect(spareLegs).toBe(0);
    expect(groups).toEqual([{ count: 27, cutMm: 1500, columns: [{ from: 1, to: 54 }] }]);
    expect(design.fringe.longMm).toBeGreaterThan(0);
  });

  it('a picture of 78 squares hangs on 39 cut cords', () => {
    // 'Macrame Portrait Wall Hanging', instructables.com; cords of about 2 m there.
    const design = hanging(78, 90);
    expect(cutList(design, gaugeOf(design)).cutCords).toBe(39);
  });

  it('50 cords of 2.40 m are 120 m in 25 cut cords of 4.80 m', () => {
    // 'How to calculate the length of cord', perlesandco.co.uk, resource 27381. The page also gives 240 m: it counts
    // both legs of a folded cord as if each were a folded cord.
    const design = withLegs(hanging(50, 100), 2400);
    const { cutCords, groups, totalMm } = cutList(design, gaugeOf(design));
    expect(cutCords).toBe(25);
    expect(groups).toEqual([{ count: 25, cutMm: 4800, columns: [{ from: 1, to: 50 }] }]);
    expect(totalMm).toBe(120_000);
    expect(totalMm).not.toBe(240_000);
  });

  it('16 cut cords give 32 legs', () => {
    // 'Macrame wall hanging', essentiallydebby.ca, June 2018.
    const design = hanging(32, 10);
    expect(cutList(design, gaugeOf(design)).cutCords).toBe(16);
  });

  it('cords at the core of the work take far less than the 7 to 8 lengths of knotting cords', () => {
    // 'Macrame: Measuring Cord Lengths', macramelovers.com: knotting cords 7-8 x folded, core cords about 2 x.
    const { cord, ...rest } = hanging(40, 200);
    const design = {
      ...rest,
      cord: { ...cord, trimMm: 0 },
      fringe: { ...rest.fringe, longMm: 0, shortMm: 0 },
    };
    const { groups } = cutList(design, gaugeOf(design));
    const lengths = groups[0]!.cutMm / (design.rows * gaugeOf(design).rowHeightMm);
    expect(lengths).toBeGreaterThan(2);
    expect(lengths).toBeLessThan(2.25);
  });
});

describe("a lark's head", () => {
  it('takes a turn of its leg around the dowel and half of the bar', () => {
    // Derived, no published figure; to be confirmed by measuring: pi (12 + 3) + 2 x 3 mm.
    const design = hanging(2, 1);
    expect(cutList(design, gaugeOf(design)).mountPerLegMm).toBeCloseTo(53.12, 2);
  });

  it('spreads the hanging where four cords are wider than two columns', () => {
    // About 4 D wide: a value from memory, to be measured.
    const head = (pitchMm: number) => cutList(hanging(2, 1), { pitchMm, rowHeightMm: 4.8, takeUp: 0.03 });
    expect(head(5)).toMatchObject({ headWidthMm: 12, headsSpread: true });
    expect(head(6)).toMatchObject({ headWidthMm: 12, headsSpread: false });
  });
});

describe('the dowel', () => {
  it('for 48 cords, 24.0 cm wide, is at least 34.2 cm long', () => {
    // First mount 2 in (51 mm) from the end: myncle.com article on dowel hangings; others mark 2.5 in.
    const { cord, ...design } = hanging(48, 10);
    const thin = { ...design, cord: { ...cord, diameterMm: 2.5 } };
    expect(dowelOf(thin, { pitchMm: 5 }).minLengthMm).toBeCloseTo(342, 9);
  });

  it('is longer where its lark’s heads are wider than the picture: 24 heads of 3 mm cord take 28.8 cm', () => {
    // A head about 4 D wide: a value from memory, to be measured.
    const design = hanging(48, 10);
    expect(dowelOf(design, { pitchMm: 5 }).minLengthMm).toBeCloseTo(24 * 12 + 102, 9);
    expect(dowelOf(design, { pitchMm: 6.5 }).minLengthMm).toBeCloseTo(48 * 6.5 + 102, 9);
  });
});
