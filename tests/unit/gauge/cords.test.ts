import { describe, expect, it } from 'vitest';
import type { Design } from '../../../shared/design/design.ts';
import { newDesign } from '../../../shared/design/new-design.ts';
import { cutList } from '../../../shared/gauge/cords.ts';
import { dowelMassG } from '../../../shared/gauge/dowel.ts';

const gauge = { pitchMm: 5, rowHeightMm: 5, takeUp: 0 };

/** Legs of 53.12 + 100 + fringe mm. */
function hanging(columns: number, change: Partial<Design> = {}): Design {
  const design = newDesign({ title: 'Any', columns, rows: 20 });
  return { ...design, cord: { ...design.cord, takeUp: 0, trimMm: 0, roundUpMm: 10 }, ...change };
}

describe('the cut list', () => {
  it('gives both legs the length of the longer one, and groups cut cords by length', () => {
    const fringe = { shape: 'v' as const, longMm: 100, shortMm: 0 };
    // Fringes 0 33 67 100 100 67 33 0, so legs of 187, 253, 253 and 187 mm decide.
    expect(cutList(hanging(8, { fringe }), gauge).groups).toEqual([
      { count: 2, cutMm: 510, columns: [{ from: 3, to: 6 }] },
      {
        count: 2,
        cutMm: 380,
        columns: [
          { from: 1, to: 2 },
          { from: 7, to: 8 },
        ],
      },
    ]);
  });

  it('of an odd number of cords has one leg to spare, at the last cord', () => {
    const list = cutList(hanging(5), gauge);
    expect([list.cutCords, list.spareLegs]).toEqual([3, 1]);
    expect(list.groups).toEqual([{ count: 3, cutMm: 610, columns: [{ from: 1, to: 5 }] }]);
    expect(cutList(hanging(6), gauge).spareLegs).toBe(0);
  });

  it('adds take-up and trim to each leg', () => {
    const { cord } = hanging(2);
    const plain = cutList(hanging(2, { cord: { ...cord, roundUpMm: 0.01 } }), gauge);
    const longer = cutList(hanging(2, { cord: { ...cord, roundUpMm: 0.01, trimMm: 20 } }), {
      ...gauge,
      takeUp: 0.1,
    });
    expect(longer.totalMm - plain.totalMm).toBeCloseTo(2 * (10 + 20), 2);
  });

  it('weighs what is cut', () => {
    const list = cutList(hanging(4), gauge);
    expect(list.totalMm).toBe(1220);
    expect(list.massG).toBeCloseTo(1.22 * 5, 9);
  });
});

describe('the dowel', () => {
  it('weighs as a cylinder of its wood', () => {
    const dowel = { diameterMm: 20, overhangMm: 0, gPerCm3: 0.7 };
    // pi x 1 cm x 1 cm x 50 cm x 0.7 g.
    expect(dowelMassG(dowel, 500)).toBeCloseTo(Math.PI * 35, 9);
  });
});
