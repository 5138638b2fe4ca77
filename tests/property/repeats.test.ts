/** Repeats across are found where they were put, and whatever is found is held to its words cell by cell. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import { type Repeat, repeatsOf } from '../../shared/chart/repeats.ts';
import { BARE } from '../../shared/design/codes.ts';

fc.configureGlobal({ seed: 8_600 });

const code = fc.constantFrom(1, 2, 3, BARE);
const startCorner = fc.constantFrom('top-left' as const, 'top-right' as const);

/** Whether each cell of a row within its border is that of the one `period` cords on. */
function comesAgain({ cells, columns }: Chart, row: number, period: number, border: number): boolean {
  for (let c = border; c + period < columns - border; c++)
    if (cells[row * columns + c] !== cells[row * columns + c + period]) return false;
  return true;
}

function rowsOf({ fromRow, toRow }: Repeat): number[] {
  return Array.from({ length: toRow - fromRow + 1 }, (_, i) => fromRow + i);
}

/** Rows of short repeats, of one yarn, and of none, in any order. */
const arbitraryChart: fc.Arbitrary<Chart> = fc
  .record({
    columns: fc.integer({ min: 1, max: 40 }),
    tiles: fc.array(fc.array(code, { minLength: 1, maxLength: 9 }), { minLength: 1, maxLength: 12 }),
    odd: fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
    startCorner,
  })
  .map(({ columns, tiles, odd, startCorner }) => {
    const rows = tiles.map((tile, row) =>
      Array.from({ length: columns }, (_, c) =>
        odd[row] && c === columns >> 1 && row % 3 === 0 ? 9 : tile[c % tile.length]!,
      ),
    );
    return { columns, rows: rows.length, startCorner, cells: Uint8Array.from(rows.flat()) };
  });

/** A block of `motif` rows put side by side between rows in which one knot stands alone, which nothing repeats. */
const arbitraryPlanted = fc
  .record({
    width: fc.integer({ min: 2, max: 9 }),
    height: fc.integer({ min: 2, max: 8 }),
    times: fc.integer({ min: 3, max: 6 }),
    above: fc.integer({ min: 0, max: 4 }),
    below: fc.integer({ min: 0, max: 4 }),
    startCorner,
  })
  .chain((planted) =>
    fc.record({
      planted: fc.constant(planted),
      leftOver: fc.integer({ min: 0, max: planted.width - 1 }),
      motif: fc.array(fc.array(code, { minLength: planted.width, maxLength: planted.width }), {
        minLength: planted.height,
        maxLength: planted.height,
      }),
    }),
  )
  .map(({ planted: { width, height, times, above, below, startCorner }, leftOver, motif }) => {
    const columns = width * times + leftOver;
    const alone = Array.from({ length: columns }, (_, c) => (c === columns >> 1 ? 9 : 1));
    // Every row changes: the first two cords of each are of two yarns.
    const tiled = motif.map((row) =>
      Array.from({ length: columns }, (_, c) =>
        c % width === 0 ? 1 : c % width === 1 ? 2 : row[c % width]!,
      ),
    );
    const rows = [...Array(above).fill(alone), ...tiled, ...Array(below).fill(alone)] as number[][];
    const chart: Chart = { columns, rows: rows.length, startCorner, cells: Uint8Array.from(rows.flat()) };
    return { chart, fromRow: above, toRow: above + height - 1, width };
  });

describe('repeats across', () => {
  it('are found where they were put, and nowhere else', () => {
    fc.assert(
      fc.property(arbitraryPlanted, ({ chart, fromRow, toRow, width }) => {
        const [found, ...others] = repeatsOf(chart);
        expect(others).toEqual([]);
        expect(found).toMatchObject({ fromRow, toRow });
        expect(width % found!.columns).toBe(0);
      }),
      { numRuns: 1_000 },
    );
  });

  it('are found within a border, which is told', () => {
    fc.assert(
      fc.property(
        arbitraryPlanted,
        fc.integer({ min: 1, max: 3 }),
        fc.constantFrom(7, 8),
        ({ chart, fromRow, toRow, width }, border, inner) => {
          fc.pre(chart.columns >= 4 * border);
          const columns = chart.columns + 2 * border;
          const cells = Uint8Array.from({ length: columns * chart.rows }, (_, at) => {
            const column = (at % columns) - border;
            const row = Math.floor(at / columns);
            return column < 0 || column >= chart.columns ? inner : chart.cells[row * chart.columns + column]!;
          });
          const [found, ...others] = repeatsOf({ ...chart, columns, cells });
          expect(others).toEqual([]);
          expect(found).toMatchObject({ fromRow, toRow, border });
          expect(width % found!.columns).toBe(0);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  it('are true, of the fewest cords, and as tall as they can be', () => {
    let found = 0;
    fc.assert(
      fc.property(arbitraryChart, (chart) => {
        const repeats = repeatsOf(chart);
        found += repeats.length;
        const inBands = new Set(repeats.flatMap(rowsOf));
        expect(inBands.size).toBe(repeats.flatMap(rowsOf).length);
        for (const repeat of repeats) {
          const { fromRow, toRow, fromColumn, columns, times, leftOver, border } = repeat;
          const again = (row: number, period: number) => comesAgain(chart, row, period, border);
          const all = (period: number) => rowsOf(repeat).every((row) => again(row, period));
          expect(toRow).toBeGreaterThan(fromRow);
          expect(times).toBeGreaterThanOrEqual(3);
          expect(times * columns + leftOver).toBe(chart.columns - 2 * border);
          expect(leftOver).toBeLessThan(columns);
          expect(fromColumn).toBe(
            chart.startCorner === 'top-left' ? border : chart.columns - border - columns,
          );
          expect(all(columns)).toBe(true);
          for (let fewer = 1; fewer < columns; fewer++) expect(all(fewer)).toBe(false);
          for (const edge of [fromRow, toRow]) expect(again(edge, 1)).toBe(false);
          for (const next of [fromRow - 1, toRow + 1]) {
            if (next < 0 || next >= chart.rows || inBands.has(next)) continue;
            expect(again(next, columns) && !again(next, 1)).toBe(false);
          }
        }
      }),
      { numRuns: 2_000 },
    );
    expect(found).toBeGreaterThan(500);
  });

  it('are none where in every row one knot stands alone', () => {
    fc.assert(
      fc.property(arbitraryChart, (chart) => {
        const middle = chart.columns >> 1;
        const cells = Uint8Array.from(chart.cells, (each, at) => (at % chart.columns === middle ? 9 : each));
        expect(repeatsOf({ ...chart, cells })).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  it('are the same cells the other way round where row 1 starts at the right', () => {
    fc.assert(
      fc.property(arbitraryChart, (chart) => {
        const { columns, rows } = chart;
        const cells = Uint8Array.from(chart.cells, (_, at) => {
          const column = at % columns;
          return chart.cells[at - column + columns - 1 - column]!;
        });
        const startCorner = chart.startCorner === 'top-left' ? 'top-right' : 'top-left';
        const mirrored = repeatsOf({ columns, rows, startCorner, cells }).map((repeat) => ({
          ...repeat,
          fromColumn: columns - repeat.fromColumn - repeat.columns,
        }));
        expect(mirrored).toEqual(repeatsOf(chart));
      }),
      { numRuns: 500 },
    );
  });
});
