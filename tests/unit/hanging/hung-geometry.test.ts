import { describe, expect, it } from 'vitest';
import { cordX } from '../../../shared/chart/hanging/geometry.ts';
import { cordXAt, hungGeometry, legsY } from '../../../shared/chart/hanging/hung-geometry.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { headsOf } from '../../../shared/gauge/heads.ts';

/** Columns 5 mm wide, so that heads of cords thicker than 2.5 mm are wider than their two columns. */
const gauge = { pitchMm: 5, rowHeightMm: 4.8 };

function hung(columns: number, diameterMm: number, overhangMm = defaults.dowel.overhangMm) {
  const design = {
    columns,
    rows: 12,
    cord: { ...defaults.cord, diameterMm },
    dowel: { ...defaults.dowel, overhangMm },
    fringe: defaults.fringe,
  };
  return { ...hungGeometry(design, gauge), ofHeads: headsOf(design, gauge) };
}

describe('a hanging on its dowel', () => {
  it.each([
    [8, 1],
    [8, 2.5],
    [9, 2.2],
    [8, 3],
    [9, 6],
    [1, 9],
  ])(
    'with %i cords of %f mm has all its heads in their true width, and none reaches into another',
    (columns, diameterMm) => {
      const { heads, ofHeads } = hung(columns, diameterMm);
      for (const { width } of heads) expect(width).toBe(4 * diameterMm);
      expect(heads).toHaveLength(Math.ceil(columns / 2));
      heads.slice(1).forEach(({ x }, i) => {
        expect(x - heads[i]!.x).toBeGreaterThanOrEqual(ofHeads.headWidthMm - 1e-9);
      });
    },
  );

  it('has heads that fit over their two columns there', () => {
    expect(hung(8, 2).heads.map(({ x }) => x)).toEqual([5, 15, 25, 35]);
  });

  it('has wider heads side by side, with the picture below their middle and the overhang at both ends', () => {
    const { heads, headsX, dowel, widthMm } = hung(8, 6, 51);
    expect(heads.map(({ x }) => x)).toEqual([-16, 8, 32, 56]);
    expect(headsX).toEqual([-28, 68]);
    expect(headsX[0] + headsX[1]).toBe(widthMm);
    expect(headsX[0] - dowel.x).toBe(51);
    expect(dowel.x + dowel.length - headsX[1]).toBe(51);
  });

  it('lets the cords fan in from their heads to their columns, close under the heads', () => {
    const geometry = hung(60, 3);
    const from = legsY(geometry);
    geometry.legX.forEach((x, column) => {
      expect(cordXAt(geometry, column, from)).toBeCloseTo(x, 9);
      expect(cordXAt(geometry, column, 0)).toBe(cordX(geometry, column));
      expect(cordXAt(geometry, column, 40)).toBe(cordX(geometry, column));
    });
    expect(geometry.legX[0]).toBeLessThan(cordX(geometry, 0));
    expect(geometry.legX[59]).toBeGreaterThan(cordX(geometry, 59));
    // The order of the cords stays: none crosses another.
    geometry.legX.slice(1).forEach((x, i) => {
      expect(x).toBeGreaterThan(geometry.legX[i]!);
    });
  });

  it('is higher by what the cords fan in within, six cords at most, and lies within its bounds', () => {
    const [narrow, wide] = [hung(60, 2), hung(60, 6)];
    expect(narrow.dowel.y + narrow.dowel.diameter).toBe(-4);
    expect(wide.dowel.y + wide.dowel.diameter).toBe(-36);
    for (const { bounds, dowel, hanger, headsX } of [narrow, wide, hung(9, 2.4, 0)]) {
      expect(bounds.left).toBeLessThanOrEqual(Math.min(dowel.x, headsX[0]));
      expect(bounds.right).toBeGreaterThanOrEqual(Math.max(dowel.x + dowel.length, headsX[1]));
      expect(bounds.top).toBeLessThan(hanger.topY);
      expect(hanger.y).toBe(dowel.y);
    }
  });
});
