import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten, reflatten } from '../../shared/chart/chart.ts';
import { BARE, EMPTY } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { arbitraryDesign } from './arbitrary-design.ts';

/** What shows in a cell, found as a person would: through the shown layers from the top, and the cord behind all. */
function shownIn({ layers }: Design, row: number, column: number): number {
  const above = layers.findLast((layer) => layer.visible && layer.rows[row]![column] !== EMPTY);
  return above ? above.rows[row]![column]! : BARE;
}

describe('the flat chart', () => {
  it('shows in each cell the topmost layer that is not empty, whatever number of cords there are', () => {
    fc.assert(
      fc.property(arbitraryDesign({ maxColumns: 19, maxRows: 6, maxLayers: 5 }), (design) => {
        const { cells, columns } = flatten(design);
        for (const [at, code] of cells.entries())
          expect(code).toBe(shownIn(design, Math.floor(at / columns), at % columns));
      }),
      { numRuns: 300 },
    );
  });

  it('is the same where only the rows that differ are flattened again', () => {
    fc.assert(
      fc.property(arbitraryDesign({ maxColumns: 19, maxRows: 6, maxLayers: 5 }), fc.nat(4), (design, at) => {
        const toggled = design.layers[at % design.layers.length]!;
        const layers = design.layers.map((layer) =>
          layer === toggled ? { ...layer, visible: !layer.visible } : layer,
        );
        const rows = Array.from({ length: design.rows }, (_, row) => row);
        const other = { ...design, layers };
        expect(reflatten(flatten(design), other, rows).cells).toEqual(flatten(other).cells);
      }),
    );
  });
});
