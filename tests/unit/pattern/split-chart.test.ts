import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellLimits, longest, pagesOf, type Room, splitChart } from '../../../shared/pattern/split-chart.ts';

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
  upright: arbitraryRoom,
  onItsSide: arbitraryRoom,
});

/** Walks over the chart page by page with cells of the least readable size, and counts: no formula. */
function fewestByWalking(cells: number, roomMm: number, cellMm: number): number {
  let fit = 0;
  while ((fit + 1) * cellMm <= roomMm + 1e-7) fit++;
  let shown = fit;
  let pages = 1;
  while (shown < cells) {
    if (fit <= cellLimits.repeated) return Number.POSITIVE_INFINITY;
    shown += fit - cellLimits.repeated;
    pages++;
  }
  return pages;
}

function fewestOn(room: Room, columns: number, rows: number, aspect: number): number {
  const width = Math.max(cellLimits.minWidthMm, cellLimits.minHeightMm * aspect);
  return fewestByWalking(columns, room.width, width) * fewestByWalking(rows, room.height, width / aspect);
}

describe('a chart cut into pages', () => {
  it('takes the fewest pages on which a cell is readable', () => {
    fc.assert(
      fc.property(arbitrarySplit, (input) => {
        const { columns, rows, aspect, upright, onItsSide } = input;
        const best = Math.min(
          fewestOn(upright, columns, rows, aspect),
          fewestOn(onItsSide, columns, rows, aspect),
        );
        fc.pre(Number.isFinite(best));
        expect(pagesOf(splitChart(input))).toBe(best);
      }),
      { numRuns: 1000 },
    );
  });

  it('never prints a cell narrower than 4 mm or lower than 2.5 mm, and fits each page into its room', () => {
    fc.assert(
      fc.property(arbitrarySplit, (input) => {
        const split = splitChart(input);
        const room = split.turned ? input.onItsSide : input.upright;
        expect(split.cellWidth).toBeGreaterThanOrEqual(4 - 1e-6);
        expect(split.cellHeight).toBeGreaterThanOrEqual(2.5 - 1e-6);
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
        const split = splitChart(input);
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
    const split = splitChart({
      columns: 20,
      rows: 10,
      aspect: 1,
      upright: a4Upright,
      onItsSide: a4OnItsSide,
    });
    expect(split).toMatchObject({ turned: false, cellWidth: 8, cellHeight: 8 });
  });

  it('never makes them coarser than 12 mm', () => {
    const split = splitChart({ columns: 3, rows: 3, aspect: 1, upright: a4Upright, onItsSide: a4OnItsSide });
    expect(split.cellWidth).toBe(12);
  });

  it('turns the sheet only where that saves pages', () => {
    const on = (columns: number, rows: number) =>
      splitChart({ columns, rows, aspect: 1, upright: a4Upright, onItsSide: a4OnItsSide });
    expect(on(60, 20)).toMatchObject({ turned: true });
    expect(pagesOf(on(60, 20))).toBe(1);
    expect(on(30, 20)).toMatchObject({ turned: false });
  });
});
