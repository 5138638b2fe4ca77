import { describe, expect, it } from 'vitest';
import { cordX, hangingGeometry } from '../../../shared/chart/hanging/geometry.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { fringeMm } from '../../../shared/gauge/fringe.ts';

const gauge = { pitchMm: 5, rowHeightMm: 4.8 };

function hanging(columns: number, rows: number, shape: 'straight' | 'v' = 'straight') {
  const design = { columns, rows, cord: defaults.cord, dowel: defaults.dowel };
  return hangingGeometry(design, gauge, fringeMm(columns, { shape, longMm: 150, shortMm: 50 }));
}

describe('where the parts of a hanging lie', () => {
  it('the knotted picture is as wide as its cords and as high as its rows', () => {
    const { widthMm, heightMm } = hanging(40, 48);
    expect(widthMm).toBeCloseTo(200, 9);
    expect(heightMm).toBeCloseTo(230.4, 9);
  });

  it('the dowel is as long as it must be, with the picture in its middle', () => {
    const { dowel, widthMm } = hanging(40, 48);
    // Twenty lark's heads of four cords each.
    expect(dowel.length).toBe(20 * 12 + 2 * 51);
    expect(dowel.x).toBe((widthMm - dowel.length) / 2);
    expect(dowel.y + dowel.diameter).toBeLessThan(0);
  });

  it('a lark’s head sits over each two cords; with an odd number the last has one', () => {
    const { heads } = hanging(5, 4);
    expect(heads.map(({ left, right }) => [left, right])).toEqual([
      [0, 1],
      [2, 3],
      [4, 4],
    ]);
    expect(heads.map(({ x }) => x)).toEqual([5, 15, 22.5]);
  });

  it('heads never reach into one another, however thick the cord', () => {
    const design = { columns: 8, rows: 4, cord: { ...defaults.cord, diameterMm: 9 }, dowel: defaults.dowel };
    const { heads } = hangingGeometry(design, gauge, fringeMm(8, defaults.fringe));
    heads.slice(1).forEach(({ x, width }, i) => {
      expect(x - width / 2).toBeGreaterThan(heads[i]!.x + heads[i]!.width / 2);
    });
  });

  it('cords hang in the middle of their columns and end where the fringe does', () => {
    const geometry = hanging(3, 10, 'v');
    expect([0, 1, 2].map((column) => cordX(geometry, column))).toEqual([2.5, 7.5, 12.5]);
    expect(geometry.cordEndsMm).toEqual([98, 198, 98]);
  });

  it('everything lies within the bounds', () => {
    const { bounds, dowel, hanger, cordEndsMm } = hanging(7, 9, 'v');
    expect(bounds.left).toBeLessThanOrEqual(dowel.x);
    expect(bounds.right).toBeGreaterThanOrEqual(dowel.x + dowel.length);
    expect(bounds.top).toBeLessThan(hanger.topY);
    expect(bounds.bottom).toBe(Math.max(...cordEndsMm));
  });
});
