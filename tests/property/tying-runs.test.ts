import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goesRight } from '../../shared/chart/chart.ts';
import { BARE, codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { writtenRows, writtenRowText } from '../../shared/tying/rows/written-rows.ts';
import { runsOf } from '../../shared/tying/runs.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 4_000 });

describe('runs', () => {
  it('hold each knot once, in tying order, and no bare cell', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ chart }) => {
        const runs = runsOf(chart);
        const tied = new Uint8Array(chart.cells.length).fill(BARE);
        let before = -1;
        for (let i = 0; i < runs.count; i++) {
          const right = goesRight(chart.startCorner, runs.row[i]!);
          const step = right ? 1 : -1;
          for (let column = runs.first[i]!; column !== runs.last[i]! + step; column += step) {
            const position = runs.row[i]! * chart.columns + (right ? column : chart.columns - 1 - column);
            expect(position).toBeGreaterThan(before);
            before = position;
            tied[runs.row[i]! * chart.columns + column] = runs.yarn[i]!;
          }
        }
        expect(tied).toEqual(chart.cells);
      }),
      { numRuns: 500 },
    );
  });

  it('are as long as they can be', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ chart }) => {
        const runs = runsOf(chart);
        for (let i = 1; i < runs.count; i++) {
          const touch = runs.row[i] === runs.row[i - 1] && Math.abs(runs.first[i]! - runs.last[i - 1]!) === 1;
          if (touch) expect(runs.yarn[i]).not.toBe(runs.yarn[i - 1]);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('written rows', () => {
  it('count every cord of each row', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        for (const { parts } of writtenRows(chart, byId(design))) {
          expect(parts.reduce((sum, { count }) => sum + count, 0)).toBe(chart.columns);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('give the chart when someone reads them and knots', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        const texts = writtenRows(chart, byId(design)).map((row) => writtenRowText(row));
        const cells = texts.flatMap((text) => [...knotted(text, design, chart.columns)]);
        expect(Uint8Array.from(cells)).toEqual(chart.cells);
      }),
      { numRuns: 500 },
    );
  });

  it('lift the cords where the yarn in hand changes, and no others', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ design, chart }) => {
        writtenRows(chart, byId(design)).forEach(({ lifts, goesRight: right }, row) => {
          const cords = Array.from({ length: chart.columns }, (_, i) => (right ? i + 1 : chart.columns - i));
          const at = (cord: number) => chart.cells[row * chart.columns + cord - 1];
          const changes = cords.filter(
            (cord, i) => i > 0 && at(cord) !== BARE && at(cord) !== at(cords[i - 1]!),
          );
          expect(lifts).toEqual(changes);
        });
      }),
      { numRuns: 300 },
    );
  });
});

function byId(design: Design) {
  return new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
}

/** One row's cells as a reader of its text would knot them. */
function knotted(text: string, design: Design, columns: number): Uint8Array {
  const cells = new Uint8Array(columns);
  if (text.endsWith(': all bare, nothing to tie')) return cells.fill(BARE);
  const parts = text.slice(text.indexOf(':') + 1).split(';')[0]!;
  for (const [, count, name, from, to] of parts.matchAll(/(\d+) ([^(]+) \((\d+)(?:-(\d+))?\)/g)) {
    const [low, high] = [Number(from), Number(to ?? from)].sort((a, b) => a - b) as [number, number];
    expect(high - low + 1).toBe(Number(count));
    expect(cells.subarray(low - 1, high).every((cell) => cell === 0)).toBe(true);
    const yarn = design.yarns.find((each) => each.name === name);
    cells.fill(yarn ? codeOf(yarn.id) : BARE, low - 1, high);
  }
  return cells;
}
