import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printScales } from '../../../../shared/pattern/chart-pages/print-scale.ts';
import {
  longest,
  pagesOf,
  REPEATED,
  type Room,
  type Split,
  splitChart,
} from '../../../../shared/pattern/chart-pages/split-chart.ts';

const a4Upright: Room = { width: 160, height: 210 };
const a4OnItsSide: Room = { width: 245, height: 125 };

const arbitraryRoom = fc.record({
  width: fc.double({ min: 60, max: 260, noNaN: true }),
  height: fc.double({ min: 40, max: 260, noNaN: true }),
});

const arbitrarySplit = fc.record({
  columns: fc.integer({ min: 1, max: 300 }),
  rows: fc.integer({ min: 1, max: 400 }),
  aspect: fc.double({ min: 1 / 3, max: 3, noNaN: true }),
  rooms: fc.array(arbitraryRoom, { minLength: 1, maxLength: 4 }),
  cell: fc.constantFrom(printScales.standard.cell, printScales.large.cell),
});

/** Walks over the chart page by page with cells of the least readable size, and counts: no formula. */
function fewestByWalking(cells: number, roomMm: number, cellMm: number): number {
  let fit = 0;
  while ((fit + 1) * cellMm <= roomMm + 1e-7) fit++;
  let shown = fit;
  let pages = 1;
  while (shown < cells) {
    if (fit <= REPEATED) return Number.POSITIVE_INFINITY;
    shown += fit - REPEATED;
    pages++;
  }
  return pages;
}

type Case = Parameters<typeof splitChart>[0];

function fewestOn(room: Room, { columns, rows, aspect, cell }: Case): number {
  const width = Math.max(cell.minWidthMm, cell.minHeightMm * aspect);
  return fewestByWalking(columns, room.width, width) * fewestByWalking(rows, room.height, width / aspect);
}

/** Of a chart that has room. */
function splitInto(input: Case): Split {
  const split = splitChart(input);
  if (!split) throw new Error('no room');
  return split;
}

function isPossible(input: Case): boolean {
  return input.rooms.some((room) => Number.isFinite(fewestOn(room, input)));
}

function onA4(columns: number, rows: number) {
  const { cell } = printScales.standard;
  return splitInto({ columns, rows, aspect: 1, cell, rooms: [a4Upright, a4OnItsSide] });
}

describe('a chart cut into pages', () => {
  it('takes the fewest pages on which a cell is readable', () => {
    fc.assert(
      fc.property(arbitrarySplit, (input) => {
        fc.pre(isPossible(input));
        const counts = input.rooms.map((room) => fewestOn(room, input));
        const split = splitInto(input);
        expect(pagesOf(split)).toBe(Math.min(...counts));
        expect(split.room).toBe(counts.indexOf(Math.min(...counts)));
      }),
      { numRuns: 1000 },
    );
  });

  it('never prints a cell narrower than 4 mm or lower than 2.5 mm, in large print 6 and 3.75, and fits each page into its room', () => {
    fc.assert(
      fc.property(arbitrarySplit, (input) => {
        fc.pre(isPossible(input));
        const isLarge = input.cell === printScales.large.cell;
        const split = splitInto(input);
        const room = input.rooms[split.room]!;
        expect(split.cellWidth).toBeGreaterThanOrEqual((isLarge ? 6 : 4) - 1e-6);
        expect(split.cellHeight).toBeGreaterThanOrEqual((isLarge ? 3.75 : 2.5) - 1e-6);
        expect(split.cellWidth / split.cellHeight).toBeCloseTo(input.aspect, 9);
        expect(longest(split.across) * split.cellWidth).toBeLessThanOrEqual(room.width + 1e-6);
        expect(longest(split.down) * split.cellHeight).toBeLessThanOrEqual(room.height + 1e-6);
      }),
      { numRuns: 1000 },
    );
  });

  it('shows every row and cord once, and says which of them a page repeats', () => {
    fc.assert(
      fc.property(arbitrarySplit, (input) => {
        fc.pre(isPossible(input));
        const split = splitInto(input);
        for (const [list, cells] of [
          [split.across, input.columns],
          [split.down, input.rows],
        ] as const) {
          const own = list.flatMap(({ first, end, repeated }) =>
            Array.from({ length: end - first - repeated }, (_, i) => first + repeated + i),
          );
          expect(own).toEqual(Array.from({ length: cells }, (_, i) => i));
          expect(list.map(({ repeated }) => repeated)).toEqual(list.map((_, i) => (i === 0 ? 0 : 2)));
        }
      }),
      { numRuns: 300 },
    );
  });

  it('makes cells as large as the sheet allows once the pages are counted', () => {
    expect(onA4(20, 10)).toMatchObject({ room: 0, cellWidth: 8, cellHeight: 8 });
  });

  it('never makes them coarser than 12 mm', () => {
    expect(onA4(3, 3).cellWidth).toBe(12);
  });

  it('needs room for three cells', () => {
    const { cell } = printScales.standard;
    const tried = (width: number) =>
      splitChart({ columns: 50, rows: 2, aspect: 1, cell, rooms: [{ width, height: 40 }] });
    expect(tried(11.9)).toBeNull();
    expect(tried(12)).not.toBeNull();
  });

  it('turns the sheet only where that saves pages', () => {
    expect(onA4(60, 20)).toMatchObject({ room: 1 });
    expect(pagesOf(onA4(60, 20))).toBe(1);
    expect(onA4(30, 20)).toMatchObject({ room: 0 });
  });
});
