import { describe, expect, it } from 'vitest';
import { carryBetween, cutAt, noCarryAt, runAround } from '../../../../../renderer/plan/pins/pin-place.ts';
import { flatten } from '../../../../../shared/chart/chart.ts';
import type { StartCorner } from '../../../../../shared/design/schema.ts';
import { designFromLetters } from '../../../../notation.ts';

const chartOf = (letters: readonly string[], startCorner: StartCorner = 'top-left') =>
  flatten({ ...designFromLetters(letters), startCorner });
/** Row 1 goes right, row 2 left. */
const chart = chartOf(['aabba', 'aabb-', 'bbbbb']);
const cell = (row: number, cord: number) => ({ row: row - 1, column: cord - 1 });

describe('the run that a cell belongs to', () => {
  it('goes as the row is tied', () => {
    expect(runAround(chart, cell(1, 3))).toMatchObject({ row: 0, first: 2, last: 3 });
    expect(runAround(chart, cell(2, 1))).toMatchObject({ row: 1, first: 1, last: 0 });
    expect(runAround(chartOf(['aabba'], 'top-right'), cell(1, 1))).toMatchObject({ first: 1, last: 0 });
  });

  it('is none where the cord is bare or the chart has ended', () => {
    expect(runAround(chart, cell(2, 5))).toBeNull();
    expect(runAround(chart, cell(9, 1))).toBeNull();
    expect(runAround(chart, cell(1, 6))).toBeNull();
  });
});

describe('a pin', () => {
  it('cuts after the last knot of the run, wherever in the run it is set', () => {
    const cut = { kind: 'cut', row: 2, cord: 1 };
    expect([cutAt(chart, cell(2, 1)), cutAt(chart, cell(2, 2))]).toEqual([cut, cut]);
    expect(cutAt(chart, cell(2, 5))).toBeNull();
  });

  it('closes exactly the cell where it is set', () => {
    expect(noCarryAt(cell(2, 5))).toEqual({ kind: 'no-carry', row: 2, cord: 5 });
  });

  it('carries from the last knot of the run tied first to the first of the other, in whatever order they are chosen', () => {
    const carry = { ok: true, value: { kind: 'carry', row: 1, cord: 2, toRow: 2, toCord: 2 } };
    expect(carryBetween(chart, cell(1, 1), cell(2, 1))).toEqual(carry);
    expect(carryBetween(chart, cell(2, 1), cell(1, 1))).toEqual(carry);
  });

  it('carries along a row in its direction, also between single knots', () => {
    const right = { kind: 'carry', row: 1, cord: 1, toRow: 1, toCord: 3 };
    expect(carryBetween(chartOf(['aba']), cell(1, 3), cell(1, 1))).toMatchObject({ value: right });
    const left = { kind: 'carry', row: 1, cord: 3, toRow: 1, toCord: 1 };
    expect(carryBetween(chartOf(['aba'], 'top-right'), cell(1, 1), cell(1, 3))).toMatchObject({
      value: left,
    });
  });

  it('carries to the next run of the yarn where one run is chosen twice', () => {
    expect(carryBetween(chart, cell(1, 1), cell(1, 2))).toMatchObject({
      value: { row: 1, cord: 2, toRow: 1, toCord: 5 },
    });
    expect(carryBetween(chart, cell(2, 1), cell(2, 2))).toMatchObject({
      ok: false,
      problem: { code: 'last-of-yarn' },
    });
  });

  it('carries neither to another yarn nor to a bare cord', () => {
    expect(carryBetween(chart, cell(1, 1), cell(1, 3))).toMatchObject({ problem: { code: 'two-yarns' } });
    expect(carryBetween(chart, cell(1, 1), cell(2, 5))).toMatchObject({ problem: { code: 'bare-cell' } });
  });
});
