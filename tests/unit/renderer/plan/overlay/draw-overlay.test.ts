import { createCanvas } from '@napi-rs/canvas';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { groupsAt } from '../../../../../renderer/plan/overlay/draw-row-bars.ts';
import { bandsOf } from '../../../../../renderer/plan/overlay/draw-worst-rows.ts';
import { drawn, plannedOf } from './drawing.ts';

// A browser's document makes canvases; here the canvas of Node does.
beforeAll(() => {
  vi.stubGlobal('document', { createElement: () => createCanvas(1, 1) });
});
afterAll(() => {
  vi.unstubAllGlobals();
});

describe('the strands, before one is chosen', () => {
  const planned = plannedOf(['aaaaaa', 'aaaaaa', 'aabbaa', 'aaaaaa']);

  it('are drawn along their rows in the colours of their yarns', () => {
    const shown = drawn({ planned, view: 'strands', cellPx: 20 });
    expect(shown.at(70, 10)).toEqual([0, 0, 255]);
    expect(shown.at(60, 50)).toEqual([0, 255, 0]);
  });

  it('lie under paper, thinner over every other strand of a yarn, however small the cells', () => {
    // Two strands of the first yarn: nothing is carried, so each run of row 1 is a strand of its own.
    const apart = plannedOf(['aabaa'], { carryMaxCords: 1 });
    expect(apart.tables.strands.count).toBe(3);
    const shown = drawn({ planned: apart, view: 'strands', cellPx: 4 });
    const [first, second] = [shown.at(2, 2), shown.at(18, 2)];
    expect(first).not.toEqual([255, 255, 255]);
    expect(second).not.toEqual([255, 255, 255]);
    expect(first[0]).toBeLessThan(second[0]!);
  });
});

describe('the rows that take the most', () => {
  const planned = plannedOf(['aaaaaa', 'aaaaaa', 'ababab', 'aaaaaa', 'aaaaaa', 'aaaaaa']);

  it('have a pointer at both edges of the chart, whatever they are ranked by, and other rows have none', () => {
    const shown = drawn({ planned, view: 'worst-rows', rowsBy: 'changes', cellPx: 16 });
    const middle = (row: number) => (row - 0.5) * 16;
    expect(shown.at(-6, middle(3))).toEqual([255, 0, 0]);
    expect(shown.at(6 * 16 + 5, middle(3))).toEqual([255, 0, 0]);
    expect(shown.hasInk(-9, middle(1) - 6, 8, 12)).toBe(false);
    expect(shown.hasInk(-9, middle(5) - 6, 8, 12)).toBe(false);
  });

  it('are marked as clearly while nothing is tied yet', () => {
    const shown = drawn({ planned, view: 'worst-rows', rowsBy: 'changes', cellPx: 16, tied: 0 });
    // The plate with the row's number lies on the chart.
    expect(shown.hasInk(20, 2 * 16, 20, 16)).toBe(true);
  });

  it('share a band where they are neighbours', () => {
    const fact = (row: number) => ({ row, live: 1, changes: 1, pieces: 1 });
    expect(bandsOf([fact(9), fact(3), fact(8), fact(1)])).toEqual([
      { top: 0, bottom: 0 },
      { top: 2, bottom: 2 },
      { top: 7, bottom: 8 },
    ]);
  });

  it('have bars of what they are ranked by', () => {
    const right = 6 * 16 + 48;
    // Nothing changes in row 1, so it has no bar; row 3 has the longest.
    const byChanges = drawn({ planned, view: 'worst-rows', rowsBy: 'changes', cellPx: 16 });
    expect(byChanges.at(right + 30, 2.5 * 16)).toEqual([255, 0, 0]);
    expect(byChanges.at(right + 2, 8)).not.toEqual([255, 0, 0]);
    const byLive = drawn({ planned, view: 'worst-rows', rowsBy: 'live', cellPx: 16 });
    expect(byLive.at(right + 2, 8)).toEqual([255, 0, 0]);
  });
});

describe('the figures of the bars', () => {
  it('have a line of their own each, however thin the rows', () => {
    for (const rowPx of [0.3, 1, 2.6, 4, 7, 13, 40]) {
      const { barRows, barsToFigure } = groupsAt(rowPx);
      expect(barRows * rowPx).toBeGreaterThanOrEqual(Math.min(rowPx, 5));
      expect(barRows * barsToFigure * rowPx).toBeGreaterThanOrEqual(13);
    }
    expect(groupsAt(40)).toEqual({ barRows: 1, barsToFigure: 1 });
  });

  it('stand beyond the longest bar, beside short bars too', () => {
    const planned = plannedOf(['aaaaaaaa', 'abababab', 'abababab', 'aaaaaaaa', 'aaaaaaaa']);
    const { rows } = planned;
    expect(rows[3]!.live).toBeLessThan(rows[1]!.live);
    const shown = drawn({ planned, view: 'live', cellPx: 16 });
    const beyondBars = 8 * 16 + 48 + 56;
    expect(shown.at(beyondBars - 2, 1.5 * 16)).toEqual([255, 0, 0]);
    for (const row of [1, 2, 3, 4]) {
      expect(shown.hasInk(beyondBars + 4, (row - 0.5) * 16 - 6, 14, 12)).toBe(true);
      expect(shown.hasInk(beyondBars, (row - 0.5) * 16 - 6, 4, 12)).toBe(false);
    }
  });
});

describe('long carries', () => {
  /** Many of them: each row changes at each cord, and its strands hang on to the next. */
  const rows = Array.from({ length: 60 }, (_, r) => (r % 2 === 0 ? 'ab' : 'ba').repeat(30));
  const planned = plannedOf(rows);

  it('are lines where there is room, and their number in each part of the chart where there is not', () => {
    const far = drawn({ planned, view: 'long-carries', overMm: 1, cellPx: 2 });
    // A part of the chart is tinted as a whole: also at its corner, where no figure stands.
    const [red, green] = far.at(1, 1);
    expect(red! - green!).toBeGreaterThan(20);
    const few = drawn({ planned, view: 'long-carries', overMm: 10_000, cellPx: 2 });
    const [fewRed, fewGreen] = few.at(1, 1);
    expect(fewRed! - fewGreen!).toBe(0);
  });
});

describe('a pin that is only pointed at', () => {
  it('shows where the strand would be cut', () => {
    const planned = plannedOf(['aaaa', 'aaaa']);
    const cut = { kind: 'cut', row: 1, cord: 4 } as const;
    // The end of the run in row 1 is the right edge of the chart.
    const [x, y] = [4 * 20, 10];
    expect(drawn({ planned, view: 'loose-ends', cellPx: 20 }).hasInk(x + 1, y - 6, 3, 12)).toBe(false);
    const shown = drawn({ planned, view: 'loose-ends', cellPx: 20, pinAhead: cut });
    expect(shown.hasInk(x, y - 6, 3, 12)).toBe(true);
  });
});
