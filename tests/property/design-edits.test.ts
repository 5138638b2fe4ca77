import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layer } from '../../shared/design/design.ts';
import { apply, inverse, paintBetween, rowsTouched } from '../../shared/design/edits.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { arbitraryDesign } from './arbitrary-design.ts';
import { randomEdit, randomPaint, seeded } from './random-edit.ts';

fc.configureGlobal({ seed: 1_000 });

describe('an edit', () => {
  it('is taken back by its inverse, and done again by the inverse of that, to the byte', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const edit = randomEdit(seeded(seed), design);
        const after = apply(design, edit);
        const back = inverse(design, edit);
        expect(writeDesign(apply(after, back))).toBe(writeDesign(design));
        expect(writeDesign(apply(apply(after, back), inverse(after, back)))).toBe(writeDesign(after));
      }),
      { numRuns: 1000 },
    );
  });

  it('leaves the design it is applied to as it was', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const before = writeDesign(design);
        apply(design, randomEdit(seeded(seed), design));
        expect(writeDesign(design)).toBe(before);
      }),
    );
  });

  it('shares each layer and each row that a stroke did not touch', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const paint = randomPaint(seeded(seed), design);
        const after = apply(design, paint);
        const touched = new Set(paint.runs.filter((_, i) => i % 4 === 0));
        for (const [l, layer] of design.layers.entries()) {
          if (layer.id !== paint.layer) expect(after.layers[l]).toBe(layer);
          for (const [r, row] of layer.rows.entries()) {
            if (layer.id !== paint.layer || !touched.has(r)) expect(after.layers[l]!.rows[r]).toBe(row);
          }
        }
      }),
    );
  });

  it('names the rows it touches: no cell changes outside them', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const edit = randomEdit(seeded(seed), design);
        const rows = rowsTouched(edit);
        if (rows === 'all') return;
        const after = apply(design, edit);
        for (const [l, layer] of design.layers.entries()) {
          for (const [r, row] of layer.rows.entries()) {
            if (!rows?.includes(r)) expect(after.layers[l]!.rows[r]).toEqual(row);
          }
        }
      }),
    );
  });
});

describe('the stroke between two states of a layer', () => {
  it('leads from one to the other and names exactly the cells that differ', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const random = seeded(seed);
        const before = design.layers[0]!;
        let after = design;
        for (let left = 3; left > 0; left--) {
          after = apply(after, { ...randomPaint(random, after), layer: before.id });
        }
        const paint = paintBetween(before, after.layers[0]!);
        const changed = cellsThatDiffer(before, after.layers[0]!);
        if (!paint) {
          expect(changed).toEqual([]);
          return;
        }
        expect(writeDesign(apply(design, paint))).toBe(writeDesign(after));
        expect(cellsNamed(paint.runs)).toEqual(changed);
      }),
      { numRuns: 500 },
    );
  });
});

function cellsThatDiffer(before: Layer, after: Layer): string[] {
  return after.rows.flatMap((row, r) =>
    Array.from(row, (code, c) => (code === before.rows[r]![c] ? '' : `${r} ${c} ${code}`)).filter(Boolean),
  );
}

function cellsNamed(runs: Uint16Array): string[] {
  const cells: string[] = [];
  for (let i = 0; i < runs.length; i += 4) {
    for (let c = runs[i + 1]!; c < runs[i + 1]! + runs[i + 2]!; c++)
      cells.push(`${runs[i]} ${c} ${runs[i + 3]}`);
  }
  return cells;
}
