import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellAt, columnEdge, fitted, rowEdge, type View, zoomed } from '../../../renderer/surface/view.ts';

const size = { pitchMm: 5, rowHeightMm: 4.8 };
const views: fc.Arbitrary<View> = fc.record({
  scale: fc.double({ min: 0.1, max: 14, noNaN: true }),
  x: fc.double({ min: -3000, max: 3000, noNaN: true }),
  y: fc.double({ min: -3000, max: 3000, noNaN: true }),
});
const places = fc.record({
  row: fc.integer({ min: 0, max: 599 }),
  column: fc.integer({ min: 0, max: 399 }),
});

describe('the view of a hanging', () => {
  it('puts edges of cells on whole pixels, so that neighbours meet', () => {
    fc.assert(
      fc.property(views, places, (view, { row, column }) => {
        expect(Number.isInteger(columnEdge(view, size, column))).toBe(true);
        expect(Number.isInteger(rowEdge(view, size, row))).toBe(true);
        expect(columnEdge(view, size, column + 1)).toBeGreaterThanOrEqual(columnEdge(view, size, column));
      }),
    );
  });

  it('finds the cell under the middle of each cell that is large enough to be hit', () => {
    const large = views.filter(({ scale }) => scale > 1);
    fc.assert(
      fc.property(large, places, (view, cell) => {
        const x = (columnEdge(view, size, cell.column) + columnEdge(view, size, cell.column + 1)) / 2;
        const y = (rowEdge(view, size, cell.row) + rowEdge(view, size, cell.row + 1)) / 2;
        expect(cellAt(view, size, x, y)).toEqual(cell);
      }),
    );
  });

  it('keeps the point that is zoomed at where it is, to the pixel', () => {
    fc.assert(
      fc.property(views, fc.double({ min: 0.5, max: 2, noNaN: true }), (view, factor) => {
        const [px, py] = [400, 300];
        const next = zoomed(view, size, factor, px, py);
        expect((px - next.x) / next.scale).toBeCloseTo((px - view.x) / view.scale, 6);
        expect((py - next.y) / next.scale).toBeCloseTo((py - view.y) / view.scale, 6);
      }),
    );
  });

  it('ends zooming in where a cell is 72 pixels wide', () => {
    const view = zoomed({ scale: 1, x: 0, y: 0 }, size, 1000, 0, 0);
    expect(view.scale * size.pitchMm).toBeCloseTo(72, 9);
  });

  it('fits a hanging into a window with its margin all around, in the middle', () => {
    const view = fitted({ left: -51, top: -80, right: 201, bottom: 420 }, 800, 600, 30);
    const [top, bottom] = [view.y - 80 * view.scale, view.y + 420 * view.scale];
    expect(top).toBeCloseTo(30, 9);
    expect(bottom).toBeCloseTo(570, 9);
    expect(view.x - 51 * view.scale + (view.x + 201 * view.scale)).toBeCloseTo(800, 9);
  });
});
