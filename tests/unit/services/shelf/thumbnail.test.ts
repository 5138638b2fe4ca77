import { describe, expect, it } from 'vitest';
import { THUMBNAIL_CELLS, THUMBNAIL_CORDS, thumbnailOf } from '../../../../app/services/shelf/thumbnail.ts';
import { newDesign } from '../../../../shared/design/new-design.ts';
import { fringeByHand } from '../../../../shared/gauge/fringe.ts';
import { designFromLetters } from '../../../notation.ts';

describe('the small picture of a design', () => {
  it('is the flat chart itself where that is small', () => {
    const { columns, rows, cells, colors, aspect } = thumbnailOf(designFromLetters(['ab-', 'baa']));
    expect([columns, rows]).toEqual([3, 2]);
    expect([...cells]).toEqual([1, 2, 255, 2, 1, 1]);
    expect(colors).toMatchObject({ 1: '#e6ddc9', 2: '#566a94' });
    // Three cords of 5 mm over two rows of 4.8 mm.
    expect(aspect).toBeCloseTo(15 / 9.6, 6);
  });

  it('is thinned to at most 200 cells a side, and shows all of the chart', () => {
    const letters = Array.from({ length: 401 }, (_, row) => (row < 200 ? 'a' : 'b').repeat(200));
    const { columns, rows, cells } = thumbnailOf(designFromLetters(letters));
    expect([columns, rows]).toEqual([THUMBNAIL_CELLS, THUMBNAIL_CELLS]);
    const firstOfRows = Array.from({ length: rows }, (_, row) => cells[row * columns]);
    expect(firstOfRows.filter((code) => code === 1)).toHaveLength(100);
  });

  it.each([
    [THUMBNAIL_CELLS, THUMBNAIL_CELLS],
    [THUMBNAIL_CELLS + 1, THUMBNAIL_CELLS],
  ])('of %i cords has %i', (columns, thinned) => {
    expect(thumbnailOf(newDesign({ title: 'Fox', columns, rows: 1 })).columns).toBe(thinned);
  });
});

describe('the small picture’s fringe', () => {
  it('is told in heights of the knotted picture, cord by cord', () => {
    const fringe = { shape: 'v' as const, longMm: 96, shortMm: 0 };
    // Ten rows of 4.8 mm.
    const design = { ...newDesign({ title: 'Fox', columns: 5, rows: 10 }), fringe };
    expect(thumbnailOf(design).fringe).toEqual([0, 1, 2, 1, 0]);
  });

  it.each([
    [THUMBNAIL_CORDS, THUMBNAIL_CORDS],
    [THUMBNAIL_CORDS + 1, THUMBNAIL_CORDS],
  ])('of %i cords is told at %i, its whole outline', (columns, told) => {
    const byHandMm = Array.from({ length: columns }, (_, c) => c);
    const design = { ...newDesign({ title: 'Fox', columns, rows: 1 }), fringe: fringeByHand(byHandMm) };
    const { fringe } = thumbnailOf(design);
    expect(fringe).toHaveLength(told);
    expect(fringe[0]).toBe(0);
    expect(fringe.at(-1)).toBeCloseTo((columns - 1) / 4.8, 6);
  });
});
