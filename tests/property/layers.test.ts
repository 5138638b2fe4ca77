import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { faultOf } from '../../shared/design/check-design.ts';
import { EMPTY } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply, type Edit, inverse } from '../../shared/design/edits.ts';
import { duplicateLayer, mergeDown, moveLayer, removeLayer } from '../../shared/design/layer-edits.ts';
import { deleteLines, insertLines, resizeTo, scaleTo } from '../../shared/design/size-edits.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import type { Result } from '../../shared/result.ts';
import { arbitraryDesign } from './arbitrary-design.ts';
import { randomAnchor, randomSizeEdit, seeded, whole } from './random-edit.ts';

fc.configureGlobal({ seed: 2_000 });

const done = (design: Design, edit: Result<Edit>): Design => {
  if (!edit.ok) throw new Error(edit.problem.sentence);
  return apply(design, edit.value);
};

/** A design whose layers are all shown and unlocked, and one of its layers, by its place. */
const shownDesign = fc
  .tuple(arbitraryDesign(), fc.nat())
  .map(([design, n]): [design: Design, at: number, id: string] => {
    const at = n % design.layers.length;
    const layers = design.layers.map((layer) => ({ ...layer, visible: true, locked: false }));
    return [{ ...design, layers }, at, design.layers[at]!.id];
  });

describe('a layer', () => {
  it('merged down never changes the chart where both are shown', () => {
    fc.assert(
      fc.property(shownDesign, ([design, at, id]) => {
        fc.pre(at > 0);
        const merged = done(design, mergeDown(design, id));
        expect(merged.layers).toHaveLength(design.layers.length - 1);
        expect(flatten(merged)).toEqual(flatten(design));
      }),
    );
  });

  it('duplicated shows nothing new, and merged with its duplicate is itself again', () => {
    fc.assert(
      fc.property(shownDesign, ([design, at, id]) => {
        const twice = done(design, duplicateLayer(design, id));
        expect(flatten(twice)).toEqual(flatten(design));
        const once = done(twice, mergeDown(twice, twice.layers[at + 1]!.id));
        expect(writeDesign(once)).toBe(writeDesign(design));
      }),
    );
  });

  it('moved up and then down lies where it lay', () => {
    fc.assert(
      fc.property(shownDesign, ([design, at, id]) => {
        fc.pre(at < design.layers.length - 1);
        const up = done(design, moveLayer(design, id, at + 1));
        expect(writeDesign(done(up, moveLayer(up, id, at)))).toBe(writeDesign(design));
      }),
    );
  });

  it('removed and brought back by undo has its place and its cells', () => {
    fc.assert(
      fc.property(shownDesign, ([design, , id]) => {
        fc.pre(design.layers.length > 1);
        const edit = removeLayer(design, id);
        if (!edit.ok) throw new Error(edit.problem.sentence);
        const after = apply(design, edit.value);
        expect(writeDesign(apply(after, inverse(design, edit.value)))).toBe(writeDesign(design));
      }),
    );
  });
});

describe('another size', () => {
  it('is always a design that can be written and read', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const random = seeded(seed);
        expect(faultOf(apply(design, randomSizeEdit(random, design)))).toBeNull();
      }),
      { numRuns: 500 },
    );
  });

  it('keeps each cord and row that was there when others are put in, and is as before when they are taken out', () => {
    fc.assert(
      fc.property(
        arbitraryDesign(),
        fc.integer(),
        fc.constantFrom('cords' as const, 'rows' as const),
        (design, seed, way) => {
          const random = seeded(seed);
          const at = whole(random, (way === 'cords' ? design.columns : design.rows) + 1);
          const count = 1 + whole(random, 5);
          const longer = done(design, insertLines(design, way, at, count));
          const again = done(longer, deleteLines(longer, way, at, count));
          expect(cellsOf(again)).toEqual(cellsOf(design));
        },
      ),
    );
  });

  it('never lets a cord show through where the lowest layer is full', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const [lowest, ...others] = design.layers;
        const full = { ...lowest!, rows: lowest!.rows.map((row) => row.map((code) => code || 255)) };
        const after = apply(
          { ...design, layers: [full, ...others] },
          randomSizeEdit(seeded(seed), { ...design, layers: [full, ...others] }),
        );
        expect(after.layers[0]!.rows.every((row) => !row.includes(EMPTY))).toBe(true);
      }),
    );
  });

  it('that grows and shrinks again by as much, held at the same place, is as it was', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.integer(), (design, seed) => {
        const random = seeded(seed);
        const anchor = randomAnchor(random);
        const columns = design.columns + 1 + whole(random, 5);
        const larger = done(
          design,
          resizeTo(design, { columns, rows: design.rows + whole(random, 6) }, anchor),
        );
        expect(cellsOf(done(larger, resizeTo(larger, design, anchor)))).toEqual(cellsOf(design));
      }),
    );
  });

  it('stretched by whole numbers and pressed together by them is as it was', () => {
    fc.assert(
      fc.property(
        arbitraryDesign(),
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: 1, max: 4 }),
        (design, by, down) => {
          const larger = done(
            design,
            scaleTo(design, { columns: design.columns * by, rows: design.rows * down }),
          );
          expect(cellsOf(done(larger, scaleTo(larger, design)))).toEqual(cellsOf(design));
        },
      ),
    );
  });
});

/** The cells alone: what is measured in mm comes back but for the last digits. */
function cellsOf({ columns, rows, layers }: Design): unknown {
  return { columns, rows, layers };
}
