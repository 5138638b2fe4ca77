import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PaintedCode, paintCells } from '../../../../shared/pattern/page/paint-cells.ts';

const BARE = 255;
const arbitraryCells = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }))
  .chain(([columns, rows]) =>
    fc.tuple(
      fc.constant(columns),
      fc.constant(rows),
      fc.array(fc.constantFrom(1, 2, 3, 4, BARE), { minLength: columns * rows, maxLength: columns * rows }),
    ),
  );

/** What is seen once all is painted; 0 where nothing is. */
function seen(painted: readonly PaintedCode[], columns: number, rows: number): number[] {
  const cells = new Array<number>(columns * rows).fill(0);
  for (const { code, rects } of painted) {
    for (let i = 0; i < rects.length; i += 4) {
      const [c, r, width, height] = rects.slice(i, i + 4) as [number, number, number, number];
      for (let y = r; y < r + height; y++) cells.fill(code, y * columns + c, y * columns + c + width);
    }
  }
  return cells;
}

const count = (painted: readonly PaintedCode[]) =>
  painted.reduce((sum, { rects }) => sum + rects.length / 4, 0);

describe('painted cells', () => {
  it('show each its own colour, and nothing where they have none', () => {
    fc.assert(
      fc.property(arbitraryCells, ([columns, rows, cells]) => {
        const painted = paintCells(Uint8Array.from(cells), columns, rows, (code) => code !== BARE);
        expect(seen(painted, columns, rows)).toEqual(cells.map((code) => (code === BARE ? 0 : code)));
      }),
      { numRuns: 500 },
    );
  });

  it('take at most a rectangle for each stretch of one colour', () => {
    fc.assert(
      fc.property(arbitraryCells, ([columns, rows, cells]) => {
        const stretches = cells.filter((code, i) => i % columns === 0 || cells[i - 1] !== code).length;
        expect(count(paintCells(Uint8Array.from(cells), columns, rows, () => true))).toBeLessThanOrEqual(
          stretches,
        );
      }),
    );
  });

  it('begin with the colour of most cells as one rectangle', () => {
    const cells = Uint8Array.from([1, 1, 2, 1, 1, 2, 1, 1, 2]);
    expect(paintCells(cells, 3, 3, () => true)).toEqual([
      { code: 1, rects: [0, 0, 3, 3] },
      { code: 2, rects: [2, 0, 1, 3] },
    ]);
  });

  it('run on under colours that are painted later, whatever these leave of them', () => {
    const cells = [1, 1, 1, 1, 1, 1, 2, 3, 2, 1, 1, 3, 2, 2, 1, 1, 2, 2, 2, 1];
    expect(paintCells(Uint8Array.from(cells), 5, 4, () => true)).toEqual([
      { code: 1, rects: [0, 0, 5, 4] },
      { code: 2, rects: [1, 1, 3, 3] },
      { code: 3, rects: [2, 1, 1, 1, 1, 2, 1, 1] },
    ]);
  });
});
