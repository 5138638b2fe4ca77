import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BARE } from '../../shared/design/codes.ts';
import { alikePairs } from '../../shared/yarn/alike-pairs.ts';
import { placesOf, touchingPairs } from '../../shared/yarn/touching.ts';
import { arbitraryChart } from './arbitrary-chart.ts';

fc.configureGlobal({ seed: 9_200, numRuns: 500 });

describe('touching yarns', () => {
  it('are counted once for each side that a knot shares with another yarn', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ chart: { cells, columns, rows }, chart }) => {
        // The other way round: every side of the chart, asked for itself.
        const sides: [number, number][] = [];
        for (let cell = 0; cell < columns * rows; cell++) {
          if (cell % columns > 0) sides.push([cells[cell - 1]!, cells[cell]!]);
          if (cell >= columns) sides.push([cells[cell - columns]!, cells[cell]!]);
        }
        const between = (a: number, b: number) =>
          sides.filter(([one, other]) => (one === a && other === b) || (one === b && other === a)).length;
        const pairs = touchingPairs(chart);
        for (const { a, b, count } of pairs) expect(count).toBe(between(a, b));
        const unlike = sides.filter(([one, other]) => one !== other && one !== BARE && other !== BARE);
        expect(pairs.reduce((sum, { count }) => sum + count, 0)).toBe(unlike.length);
      }),
    );
  });

  it('are the same from left and from right', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ chart }) => {
        const { columns } = chart;
        const cells = chart.cells.map(
          (_, cell) => chart.cells[cell - (cell % columns) + columns - 1 - (cell % columns)]!,
        );
        expect(touchingPairs({ ...chart, cells })).toEqual(touchingPairs(chart));
      }),
    );
  });

  it('have places exactly where they touch', () => {
    fc.assert(
      fc.property(arbitraryChart(), ({ chart }) => {
        for (const { a, b, count } of touchingPairs(chart)) {
          const mask = placesOf(chart, a, b);
          const marked = chart.cells.filter((_, cell) => mask[cell] === 1);
          expect(new Set(marked)).toEqual(new Set([a, b]));
          // A knot has four sides, so that as many touches have at least a quarter as many knots of each yarn.
          for (const code of [a, b])
            expect(marked.filter((each) => each === code).length * 4).toBeGreaterThanOrEqual(count);
        }
        expect(placesOf(chart, 1, BARE - 1).every((mark) => mark === 0)).toBe(true);
      }),
    );
  });

  it('look alike in every sight where they have one colour, and in none where black meets white', () => {
    fc.assert(
      fc.property(arbitraryChart({ maxYarns: 2 }), ({ design, chart }) => {
        const coloured = (...colors: string[]) =>
          alikePairs(
            chart,
            design.yarns.map(({ id }, i) => ({ id, color: colors[i]! })),
          );
        const touching = touchingPairs(chart);
        expect(coloured('#808080', '#808080').map(({ alike }) => alike.length)).toEqual(
          touching.map(() => 5),
        );
        expect(coloured('#000000', '#ffffff')).toEqual([]);
      }),
    );
  });
});
