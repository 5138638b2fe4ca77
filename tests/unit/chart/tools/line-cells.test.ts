import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineCells } from '../../../../shared/chart/tools/line-cells.ts';

describe('a line', () => {
  const places = fc.record({
    row: fc.integer({ min: -50, max: 50 }),
    column: fc.integer({ min: -50, max: 50 }),
  });

  it('goes from one cell to the other without a gap and without a cell too many', () => {
    fc.assert(
      fc.property(places, places, (from, to) => {
        const cells = lineCells(from, to);
        expect(cells[0]).toEqual(from);
        expect(cells.at(-1)).toEqual(to);
        const reach = Math.max(Math.abs(to.row - from.row), Math.abs(to.column - from.column));
        expect(cells).toHaveLength(reach + 1);
        cells.slice(1).forEach((each, i) => {
          expect(Math.abs(each.row - cells[i]!.row)).toBeLessThanOrEqual(1);
          expect(Math.abs(each.column - cells[i]!.column)).toBeLessThanOrEqual(1);
        });
      }),
    );
  });

  it('never strays more than half a cell from the straight one', () => {
    fc.assert(
      fc.property(places, places, (from, to) => {
        const across = to.column - from.column;
        const down = to.row - from.row;
        const long = Math.max(Math.abs(across), Math.abs(down)) || 1;
        for (const { row, column } of lineCells(from, to)) {
          const off = Math.abs((column - from.column) * down - (row - from.row) * across) / long;
          expect(off).toBeLessThanOrEqual(0.5 + 1e-9);
        }
      }),
    );
  });
});
