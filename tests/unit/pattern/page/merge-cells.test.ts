import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergeCells } from '../../../../shared/pattern/page/merge-cells.ts';

describe('cells merged into rectangles', () => {
  it('cover each cell once, with its own code', () => {
    fc.assert(
      fc.property(
        fc
          .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }))
          .chain(([columns, rows]) =>
            fc.tuple(
              fc.constant(columns),
              fc.constant(rows),
              fc.array(fc.constantFrom(1, 2, 255), { minLength: columns * rows, maxLength: columns * rows }),
            ),
          ),
        ([columns, rows, cells]) => {
          const drawn = new Uint8Array(columns * rows);
          for (const [code, rects] of mergeCells(Uint8Array.from(cells), columns, rows)) {
            for (let i = 0; i < rects.length; i += 4) {
              const [c, r, width, height] = rects.slice(i, i + 4) as [number, number, number, number];
              for (let y = r; y < r + height; y++) {
                for (let x = c; x < c + width; x++) {
                  expect(drawn[y * columns + x]).toBe(0);
                  drawn[y * columns + x] = code;
                }
              }
            }
          }
          expect([...drawn]).toEqual(cells);
        },
      ),
    );
  });

  it('make one rectangle of one area', () => {
    const cells = Uint8Array.from([1, 1, 2, 1, 1, 2, 1, 1, 2]);
    expect(mergeCells(cells, 3, 3)).toEqual(
      new Map([
        [1, [0, 0, 2, 3]],
        [2, [2, 0, 1, 3]],
      ]),
    );
  });
});
