import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import type { Cell } from '../../shared/chart/tools/cell.ts';
import { ellipseCounts } from '../../shared/chart/tools/ellipse-counts.ts';
import { ellipseStrips } from '../../shared/chart/tools/ellipse-strips.ts';
import { type FillScope, fillStrips } from '../../shared/chart/tools/fill-strips.ts';
import { lineCells } from '../../shared/chart/tools/line-cells.ts';
import { nibCells } from '../../shared/chart/tools/nib.ts';
import { rectangleStrips } from '../../shared/chart/tools/rectangle-strips.ts';
import { replaceYarnIn } from '../../shared/chart/tools/replace-yarn.ts';
import { squared } from '../../shared/chart/tools/squared.ts';
import { straightened } from '../../shared/chart/tools/straightened.ts';
import type { Strips } from '../../shared/chart/tools/strips.ts';
import { strokeStrips } from '../../shared/chart/tools/stroke-strips.ts';
import { EMPTY } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { apply, type Edit } from '../../shared/design/edits.ts';
import { replaceYarnEverywhere } from '../../shared/design/yarn-edits.ts';
import { arbitraryDesign } from './arbitrary-design.ts';

fc.configureGlobal({ seed: 2_000 });

const place = (most = 20) =>
  fc.record({ row: fc.integer({ min: -5, max: most }), column: fc.integer({ min: -5, max: most }) });
const nib = fc
  .tuple(
    fc.integer({ min: 1, max: 32 }),
    fc.constantFrom('round' as const, 'square' as const, 'flat-across' as const, 'flat-down' as const),
  )
  .map(([width, shape]) => nibCells(width, shape));
const way = fc
  .array(place(), { minLength: 1, maxLength: 6 })
  .map((places) => places.flatMap((each, i) => lineCells(places[i - 1] ?? each, each)));
const side = fc.integer({ min: 1, max: 40 });
const pitchMm = fc.double({ min: 2, max: 12, noNaN: true });

const key = ({ row, column }: Cell) => `${row},${column}`;

/** Every cell that strips draw, as often as they draw it. */
function cellsOf(strips: Strips): string[] {
  const cells: string[] = [];
  for (let i = 0; i < strips.length; i += 4) {
    for (let c = 0; c < strips[i + 2]!; c++) cells.push(key({ row: strips[i]!, column: strips[i + 1]! + c }));
  }
  return cells;
}

/** What is left when one spreads from the first of these cells to those beside it, or by corners too. */
function unreached(cells: ReadonlySet<string>, byCorners: boolean): Set<string> {
  const left = new Set(cells);
  const todo = [...cells].slice(0, 1);
  left.delete(todo[0]!);
  while (todo.length > 0) {
    const [row, column] = todo.pop()!.split(',').map(Number) as [number, number];
    for (const [down, across] of [-1, 0, 1].flatMap((d) => [-1, 0, 1].map((a) => [d, a] as const))) {
      const next = key({ row: row + down, column: column + across });
      if ((byCorners || down === 0 || across === 0) && left.delete(next)) todo.push(next);
    }
  }
  return left;
}

describe('a stroke', () => {
  it('is the nib at each cell of its way, each cell drawn once, in as few strips as there can be', () => {
    fc.assert(
      fc.property(way, nib, (cells, offsets) => {
        const strips = strokeStrips(cells, 1, offsets);
        const plain = new Set(
          cells.flatMap((at) =>
            offsets.map((by) => key({ row: at.row + by.row, column: at.column + by.column })),
          ),
        );
        const drawn = cellsOf(strips);
        expect(drawn).toHaveLength(plain.size);
        expect(new Set(drawn)).toEqual(plain);
        for (let i = 4; i < strips.length; i += 4) {
          const isNextRow = strips[i]! > strips[i - 4]!;
          const isApart = strips[i + 1]! > strips[i - 3]! + strips[i - 2]!;
          expect(isNextRow || (strips[i] === strips[i - 4] && isApart)).toBe(true);
        }
      }),
    );
  });

  it('has no gap, whatever the nib', () => {
    fc.assert(
      fc.property(way, nib, (cells, offsets) => {
        expect(unreached(new Set(cellsOf(strokeStrips(cells, 1, offsets))), true)).toEqual(new Set());
      }),
    );
  });
});

describe('a nib', () => {
  it('looks the same in both mirrors, and is as wide as it says', () => {
    for (let width = 1; width <= 32; width++) {
      for (const shape of ['round', 'square'] as const) {
        const cells = nibCells(width, shape);
        const from = Math.ceil((1 - width) / 2) + 0;
        const all = new Set(cells.map(key));
        const other = (at: number) => 2 * from + width - 1 - at;
        const images = cells.flatMap(({ row, column }) => [
          key({ row: other(row), column }),
          key({ row, column: other(column) }),
          key({ row: column, column: row }),
        ]);
        expect(new Set(images)).toEqual(all);
        expect(Math.min(...cells.map(({ row }) => row))).toBe(from);
        expect(Math.max(...cells.map(({ column }) => column))).toBe(from + width - 1);
      }
    }
  });
});

describe('a filled ellipse', () => {
  it('mirrors onto itself both ways, touches its box, and narrows towards its ends', () => {
    fc.assert(
      fc.property(side, side, (columns, rows) => {
        const counts = [...ellipseCounts(columns, rows)];
        expect(counts.toReversed()).toEqual(counts);
        expect(Math.max(...counts)).toBe(columns);
        for (const [r, count] of counts.entries()) {
          expect(count).toBeGreaterThan(0);
          expect((columns - count) % 2).toBe(0);
          if (r > 0 && r < rows / 2) expect(count).toBeGreaterThanOrEqual(counts[r - 1]!);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('is the same with its rows and columns exchanged', () => {
    fc.assert(
      fc.property(side, side, (columns, rows) => {
        const counts = ellipseCounts(columns, rows);
        const inColumn = Array.from(
          { length: columns },
          (_, c) => counts.filter((count) => Math.abs(2 * c + 1 - columns) < count).length,
        );
        expect(inColumn).toEqual([...ellipseCounts(rows, columns)]);
      }),
      { numRuns: 1000 },
    );
  });

  it('has no cell more than one away from the true ellipse', () => {
    fc.assert(
      fc.property(side, side, (columns, rows) => {
        for (const [r, count] of ellipseCounts(columns, rows).entries()) {
          const off = (2 * r + 1 - rows) / rows;
          const exact = columns * Math.sqrt(1 - off * off);
          // A row's ends lie within the ellipse at its lower and upper edges, give or take the cell's own half.
          const inner = columns * Math.sqrt(Math.max(0, 1 - (Math.abs(off) + 1 / rows) ** 2));
          const outer = columns * Math.sqrt(1 - Math.max(0, Math.abs(off) - 1 / rows) ** 2);
          expect(count).toBeGreaterThanOrEqual(Math.min(inner, exact) - 2);
          expect(count).toBeLessThanOrEqual(outer + 2);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('an outline', () => {
  const shapes = { ellipse: ellipseStrips, rectangle: rectangleStrips };
  const drawn = fc.record({
    shape: fc.constantFrom('ellipse' as const, 'rectangle' as const),
    columns: side,
    rows: side,
    width: fc.integer({ min: 1, max: 8 }),
    from: place(),
  });
  const outlineOf = (
    {
      shape,
      columns,
      rows,
      width,
      from,
    }: { shape: keyof typeof shapes; columns: number; rows: number; width: number; from: Cell },
    filled: boolean,
  ) =>
    cellsOf(
      shapes[shape](from, { row: from.row + rows - 1, column: from.column + columns - 1 }, 1, {
        filled,
        width,
      }),
    );

  it('draws each cell once, hangs together, and keeps the inside from the outside', () => {
    fc.assert(
      fc.property(drawn, (each) => {
        const cells = outlineOf(each, false);
        const outline = new Set(cells);
        expect(outline.size).toBe(cells.length);
        expect(unreached(outline, true).size).toBe(0);
        const whole = new Set(outlineOf(each, true));
        expect(cells.filter((cell) => !whole.has(cell))).toEqual([]);
        const near = (cell: string, by: number) => {
          const [row, column] = cell.split(',').map(Number) as [number, number];
          const beside = [by, -by].flatMap((at) => [
            key({ row: row + at, column }),
            key({ row, column: column + at }),
          ]);
          return beside.every((each) => whole.has(each));
        };
        const inside = [...whole].filter((cell) => !outline.has(cell));
        // The shapes have no dents, so that what is in at the full width is in at every step to it.
        expect(inside.filter((cell) => !near(cell, each.width))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('of single cells has no square corner in an ellipse, but where its very sides are', () => {
    fc.assert(
      fc.property(side, side, (columns, rows) => {
        const cells = new Set(
          outlineOf({ shape: 'ellipse', columns, rows, width: 1, from: { row: 0, column: 0 } }, false),
        );
        const isMiddle = (at: number, of: number) => Math.abs(2 * at + 1 - of) <= 1;
        for (const cell of cells) {
          const [row, column] = cell.split(',').map(Number) as [number, number];
          if (isMiddle(row, rows) || isMiddle(column, columns)) continue;
          const inwards = { row: row * 2 < rows ? 1 : -1, column: column * 2 < columns ? 1 : -1 };
          const isSquare =
            cells.has(key({ row: row + inwards.row, column })) &&
            cells.has(key({ row, column: column + inwards.column }));
          expect(isSquare, `${cell} of ${columns} x ${rows}`).toBe(false);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a constraint', () => {
  it('holds a line level, upright or at one to one, and leaves alone what is so already', () => {
    fc.assert(
      fc.property(place(), place(), pitchMm, pitchMm, (from, to, pitch, rowHeight) => {
        const end = straightened(from, to, pitch, rowHeight);
        const [down, across] = [Math.abs(end.row - from.row), Math.abs(end.column - from.column)];
        expect(down === 0 || across === 0 || down === across).toBe(true);
        expect(straightened(from, end, pitch, rowHeight)).toEqual(end);
      }),
    );
  });

  it('makes the sides of a box alike in mm to half a cell, and never smaller', () => {
    fc.assert(
      fc.property(place(), place(), pitchMm, pitchMm, (from, to, pitch, rowHeight) => {
        const end = squared(from, to, pitch, rowHeight);
        const columns = Math.abs(end.column - from.column) + 1;
        const rows = Math.abs(end.row - from.row) + 1;
        expect(columns).toBeGreaterThanOrEqual(Math.abs(to.column - from.column) + 1);
        expect(rows).toBeGreaterThanOrEqual(Math.abs(to.row - from.row) + 1);
        const apartMm = Math.abs(columns * pitch - rows * rowHeight);
        expect(apartMm).toBeLessThanOrEqual(Math.max(pitch, rowHeight) / 2 + 1e-9);
      }),
    );
  });
});

describe('a fill', () => {
  const pressed = arbitraryDesign().chain((design) =>
    fc.record({
      design: fc.constant(design),
      row: fc.integer({ min: 0, max: design.rows - 1 }),
      column: fc.integer({ min: 0, max: design.columns - 1 }),
    }),
  );
  const drawnBy = (design: Design, start: Cell, scope: FillScope) =>
    cellsOf(fillStrips(design, flatten(design), start, 200, scope));

  it('of what touches is what plain spreading to the sides reaches', () => {
    fc.assert(
      fc.property(pressed, ({ design, row, column }) => {
        const { cells, columns } = flatten(design);
        const alike = new Set([key({ row, column })]);
        for (const [i, code] of cells.entries()) {
          if (code === cells[row * columns + column]) {
            alike.add(key({ row: Math.floor(i / columns), column: i % columns }));
          }
        }
        const away = unreached(alike, false);
        const drawn = drawnBy(design, { row, column }, 'touching');
        expect(new Set(drawn)).toEqual(new Set([...alike].filter((cell) => !away.has(cell))));
        expect(new Set(drawn).size).toBe(drawn.length);
        expect(new Set(drawnBy(design, { row, column }, 'everywhere'))).toEqual(alike);
      }),
    );
  });

  it('fills the same cells from whichever of them it is pressed on', () => {
    fc.assert(
      fc.property(pressed, fc.nat(), ({ design, row, column }, other) => {
        for (const scope of ['touching', 'everywhere'] as const) {
          const cells = drawnBy(design, { row, column }, scope);
          const [atRow, atColumn] = cells[other % cells.length]!.split(',').map(Number) as [number, number];
          expect(new Set(drawnBy(design, { row: atRow, column: atColumn }, scope))).toEqual(new Set(cells));
        }
      }),
    );
  });

  it('to a boundary is what plain spreading reaches where all shown layers but the lowest are empty', () => {
    fc.assert(
      fc.property(pressed, ({ design, row, column }) => {
        const above = design.layers.filter(({ visible }) => visible).slice(1);
        const isDrawn = (r: number, c: number) => above.some(({ rows }) => rows[r]![c] !== EMPTY);
        const drawn = drawnBy(design, { row, column }, 'to-boundary');
        if (above.length === 0 || isDrawn(row, column)) {
          expect(drawn).toEqual(drawnBy(design, { row, column }, 'touching'));
          return;
        }
        const free = new Set([key({ row, column })]);
        for (let r = 0; r < design.rows; r++) {
          for (let c = 0; c < design.columns; c++) if (!isDrawn(r, c)) free.add(key({ row: r, column: c }));
        }
        const away = unreached(free, false);
        expect(new Set(drawn)).toEqual(new Set([...free].filter((cell) => !away.has(cell))));
      }),
      { numRuns: 300 },
    );
  });
});

describe('a yarn replaced', () => {
  const applied = (design: Design, edit: Edit) => {
    const next = apply(design, edit);
    return next.layers.map(({ rows }) => rows.map((row) => [...row]));
  };

  it('in the whole chart is replaced as in all its layers, one by one', () => {
    fc.assert(
      fc.property(arbitraryDesign(), fc.nat(), fc.nat(), (design, a, b) => {
        const from = design.yarns[a % design.yarns.length]!.id;
        const to = design.yarns[b % design.yarns.length]!.id;
        const codes = [Number(from.slice(1)), Number(to.slice(1))] as const;
        const whole = applied(design, replaceYarnIn(design, ...codes, { kind: 'chart' }));
        expect(whole).toEqual(applied(design, replaceYarnEverywhere(design, from, to)));
        const edits = design.layers.map(({ id }) =>
          replaceYarnIn(design, ...codes, { kind: 'layer', layer: id }),
        );
        expect(applied(design, { kind: 'together', edits })).toEqual(whole);
      }),
    );
  });
});
