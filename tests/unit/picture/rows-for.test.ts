import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowsFor } from '../../../shared/picture/rows-for.ts';

describe('rows for a picture', () => {
  it('are as many as cords where picture and knots are square', () => {
    expect(rowsFor(60, 500, 500, 5, 5)).toBe(60);
  });

  it('are more where a knot is wider than high: pitch 5 mm, row height 4.8 mm (the gauge of craft.md)', () => {
    // 60 cords are 300 mm; 300 / 4.8 = 62.5, rounded.
    expect(rowsFor(60, 500, 500, 5, 4.8)).toBe(63);
    expect(rowsFor(60, 1000, 500, 5, 4.8)).toBe(31);
  });

  it('are never none', () => expect(rowsFor(3, 10_000, 1, 5, 4.8)).toBe(1));

  it('keep the proportions to within half a row', () => {
    const px = fc.integer({ min: 50, max: 5000 });
    const mm = fc.double({ min: 2, max: 12, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 1000 }),
        px,
        px,
        mm,
        mm,
        (columns, width, height, pitch, rowHeight) => {
          const rows = rowsFor(columns, width, height, pitch, rowHeight);
          const wantedMm = (columns * pitch * height) / width;
          expect(Math.abs(rows * rowHeight - wantedMm)).toBeLessThanOrEqual(
            Math.max(rowHeight / 2, rowHeight - wantedMm) + 1e-6,
          );
        },
      ),
      { seed: 6, numRuns: 500 },
    );
  });
});
