import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CellMap, imageOf } from '../../shared/chart/symmetry/cell-map.ts';
import { copyStrips } from '../../shared/chart/symmetry/copy-strips.ts';
import { elementsOf } from '../../shared/chart/symmetry/elements.ts';
import { pointKinds, repeatKinds } from '../../shared/chart/symmetry/kinds.ts';
import { centreOf, soundSymmetry } from '../../shared/chart/symmetry/sound-symmetry.ts';
import { noSymmetry, type PointKind, type Symmetry } from '../../shared/chart/symmetry/symmetry.ts';
import { type Cell, type ChartSize, isInside } from '../../shared/chart/tools/cell.ts';
import { paintStrips, type Strips } from '../../shared/chart/tools/strips.ts';
import { EMPTY } from '../../shared/design/codes.ts';
import { apply } from '../../shared/design/edits.ts';
import { newDesign } from '../../shared/design/new-design.ts';

fc.configureGlobal({ seed: 7_000 });

interface SymmetryCase {
  readonly size: ChartSize;
  readonly symmetry: Symmetry;
}

const arbitrarySymmetry: fc.Arbitrary<SymmetryCase> = fc
  .record({ columns: fc.integer({ min: 1, max: 13 }), rows: fc.integer({ min: 1, max: 11 }) })
  .chain((size) =>
    fc.record({
      size: fc.constant(size),
      symmetry: fc.record<Symmetry>({
        point: fc.constantFrom(...pointKinds.map(({ kind }) => kind)),
        centre: fc.oneof(
          fc.constant(centreOf(size)),
          fc.record({
            acrossHalves: fc.integer({ min: 0, max: 2 * size.columns }),
            downHalves: fc.integer({ min: 0, max: 2 * size.rows }),
          }),
        ),
        repeat: fc.constantFrom(...repeatKinds.map(({ kind }) => kind)),
        periodColumns: fc.integer({ min: 1, max: 14 }),
        periodRows: fc.integer({ min: 1, max: 14 }),
      }),
    }),
  );

/** The map that does what `first` does and then what `then` does. */
function composed(then: CellMap, first: CellMap): CellMap {
  const at = imageOf({ row: first.r0, column: first.c0 }, then);
  return {
    rr: then.rr * first.rr + then.rc * first.cr,
    rc: then.rr * first.rc + then.rc * first.cc,
    r0: at.row,
    cr: then.cr * first.rr + then.cc * first.cr,
    cc: then.cr * first.rc + then.cc * first.cc,
    c0: at.column,
  };
}

function nameOf({ rr, rc, r0, cr, cc, c0 }: CellMap): string {
  // Adding 0 makes a plain 0 of -0.
  return [rr, rc, r0, cr, cc, c0].map((part) => part + 0).join(' ');
}

const identity = nameOf({ rr: 1, rc: 0, r0: 0, cr: 0, cc: 1, c0: 0 });

/** How often the map must be done until every cell is back. */
function orderOf(map: CellMap): number {
  let power = map;
  let order = 1;
  while (nameOf(power) !== identity) {
    power = composed(map, power);
    order++;
    if (order > 8) throw new Error(`${nameOf(map)} never comes back`);
  }
  return order;
}

function cellsOf({ columns, rows }: ChartSize): Cell[] {
  return Array.from({ length: columns * rows }, (_, i) => ({
    row: Math.floor(i / columns),
    column: i % columns,
  }));
}

describe('the point groups', () => {
  /**
   * The orders of the elements of each group: C1, D1, C2, D2 (the four-group), C4 and D4. They are in every table of
   * small groups; written down from memory.
   */
  const ordersOfElements: Record<PointKind, readonly number[]> = {
    none: [1],
    'mirror-left-right': [1, 2],
    'mirror-top-bottom': [1, 2],
    'mirror-diagonal': [1, 2],
    'mirror-antidiagonal': [1, 2],
    'half-turn': [1, 2],
    'mirror-both': [1, 2, 2, 2],
    'mirror-diagonals': [1, 2, 2, 2],
    'quarter-turn': [1, 2, 4, 4],
    'quarter-turn-mirrored': [1, 2, 2, 2, 2, 2, 4, 4],
  };

  it('have the elements that mathematics says, each of an order that divides the order of the group', () => {
    fc.assert(
      fc.property(arbitrarySymmetry, ({ symmetry, size }) => {
        const elements = elementsOf({ ...symmetry, repeat: 'none' }, size);
        const orders = elements.map(orderOf).sort((a, b) => a - b);
        expect(orders).toEqual(ordersOfElements[symmetry.point]);
        for (const order of orders) expect(elements.length % order).toBe(0);
        expect(pointKinds.find(({ kind }) => kind === symmetry.point)!.order).toBe(elements.length);
      }),
    );
  });

  it('are closed, and hold the inverse of each element', () => {
    fc.assert(
      fc.property(arbitrarySymmetry, ({ symmetry, size }) => {
        const elements = elementsOf({ ...symmetry, repeat: 'none' }, size);
        const names = new Set(elements.map(nameOf));
        expect(names.size).toBe(elements.length);
        for (const a of elements) {
          for (const b of elements) expect(names).toContain(nameOf(composed(a, b)));
          expect(elements.some((b) => nameOf(composed(a, b)) === identity)).toBe(true);
        }
      }),
    );
  });

  it('hold the centre, to which the place of a cell is measured in halves', () => {
    fc.assert(
      fc.property(arbitrarySymmetry, ({ symmetry, size }) => {
        const { centre } = soundSymmetry(symmetry, size);
        const far = ({ row, column }: Cell) =>
          (2 * row + 1 - centre.downHalves) ** 2 + (2 * column + 1 - centre.acrossHalves) ** 2;
        for (const map of elementsOf({ ...symmetry, repeat: 'none' }, size)) {
          for (const cell of cellsOf(size)) expect(far(imageOf(cell, map))).toBe(far(cell));
        }
      }),
    );
  });
});

describe('all elements of a symmetry', () => {
  const comesBack = (map: CellMap, size: ChartSize) => {
    const one = imageOf({ row: 0, column: 0 }, map);
    const other = imageOf({ row: size.rows - 1, column: size.columns - 1 }, map);
    const apart = (a: number, b: number, count: number) => Math.max(a, b) < 0 || Math.min(a, b) >= count;
    return !apart(one.row, other.row, size.rows) && !apart(one.column, other.column, size.columns);
  };

  it('are no two alike, end with the identity, and where repeated bring some cell of the chart into the chart', () => {
    fc.assert(
      fc.property(arbitrarySymmetry, ({ symmetry, size }) => {
        const elements = elementsOf(symmetry, size);
        expect(new Set(elements.map(nameOf)).size).toBe(elements.length);
        expect(nameOf(elements.at(-1)!)).toBe(identity);
        if (symmetry.repeat === 'none') return;
        for (const map of elements) expect(comesBack(map, size)).toBe(true);
      }),
    );
  });

  it('are closed, but for what brings no cell of the chart into the chart', () => {
    fc.assert(
      fc.property(arbitrarySymmetry, fc.nat(), fc.nat(), ({ symmetry, size }, i, j) => {
        const elements = elementsOf(symmetry, size);
        const both = composed(elements[i % elements.length]!, elements[j % elements.length]!);
        fc.pre(comesBack(both, size));
        expect(elements.map(nameOf)).toContain(nameOf(both));
      }),
      { numRuns: 500 },
    );
  });
});

interface DrawnCase extends SymmetryCase {
  /** Strips of one to three codes, some of them reaching beyond the chart where `reach` says so. */
  readonly strips: Strips;
}

function arbitraryDrawing(codes: number, reach: number): fc.Arbitrary<DrawnCase> {
  return arbitrarySymmetry.chain(({ size, symmetry }) => {
    const strip = fc
      .record({
        row: fc.integer({ min: -reach, max: size.rows - 1 + reach }),
        column: fc.integer({ min: -reach, max: size.columns - 1 + reach }),
        count: fc.integer({ min: 1, max: 6 }),
        code: fc.integer({ min: 1, max: codes }),
      })
      .map(({ row, column, count, code }) => {
        const most = reach > 0 ? count : Math.min(count, size.columns - column);
        return [row, column, most, code];
      });
    return fc
      .array(strip, { maxLength: 5 })
      .map((strips) => ({ size, symmetry, strips: Int32Array.from(strips.flat()) }));
  });
}

/** The code of each cell, row by row, when the strips are drawn on an empty layer. */
function drawnOn({ columns, rows }: ChartSize, strips: Strips): Uint8Array {
  const design = newDesign({ title: 'Random', columns, rows });
  const layer = { ...design.layers[0]!, rows: Array.from({ length: rows }, () => new Uint8Array(columns)) };
  const empty = { ...design, layers: [layer] };
  const edit = paintStrips(layer.id, strips, { columns, rows });
  const drawn = edit ? apply(empty, edit) : empty;
  return Uint8Array.from(drawn.layers[0]!.rows.flatMap((row) => [...row]));
}

/** For each cell the codes that the drawing's images bring to it, found by moving one cell after another. */
function codesBrought({ strips, symmetry, size }: DrawnCase): Set<number>[] {
  const drawn = drawnOn(size, strips);
  const brought = cellsOf(size).map(() => new Set<number>());
  for (const map of elementsOf(symmetry, size)) {
    for (const cell of cellsOf(size)) {
      const code = drawn[cell.row * size.columns + cell.column]!;
      const image = imageOf(cell, map);
      if (code !== EMPTY && isInside(image, size))
        brought[image.row * size.columns + image.column]!.add(code);
    }
  }
  return brought;
}

describe('a drawing that is copied', () => {
  it('in one yarn is the same chart after every element of its symmetry', () => {
    fc.assert(
      fc.property(arbitraryDrawing(1, 4), ({ strips, symmetry, size }) => {
        const drawn = drawnOn(size, copyStrips(strips, symmetry, size));
        for (const map of elementsOf(symmetry, size)) {
          for (const cell of cellsOf(size)) {
            const image = imageOf(cell, map);
            if (!isInside(image, size)) continue;
            expect(drawn[image.row * size.columns + image.column]).toBe(
              drawn[cell.row * size.columns + cell.column],
            );
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('in several yarns shows at each cell what its images bring there, and nothing where they bring nothing', () => {
    fc.assert(
      fc.property(arbitraryDrawing(3, 0), (drawing) => {
        const { strips, symmetry, size } = drawing;
        const drawn = drawnOn(size, copyStrips(strips, symmetry, size));
        codesBrought(drawing).forEach((codes, i) => {
          if (codes.size === 0) expect(drawn[i]).toBe(EMPTY);
          else expect(codes).toContain(drawn[i]);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('lies on top of its images', () => {
    fc.assert(
      fc.property(arbitraryDrawing(3, 4), ({ strips, symmetry, size }) => {
        const copied = drawnOn(size, copyStrips(strips, symmetry, size));
        drawnOn(size, strips).forEach((code, i) => {
          if (code !== EMPTY) expect(copied[i]).toBe(code);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('is left as it is without symmetry', () => {
    fc.assert(
      fc.property(arbitraryDrawing(3, 4), ({ strips, symmetry, size }) => {
        const none: Symmetry = { ...symmetry, point: noSymmetry.point, repeat: noSymmetry.repeat };
        expect(copyStrips(strips, none, size)).toBe(strips);
      }),
    );
  });
});
