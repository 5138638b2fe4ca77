import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../shared/chart/chart.ts';
import { BARE, codeOf } from '../../shared/design/codes.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import { rowsWords } from '../../shared/pattern/words/rows-words.ts';
import { compactRowText, writtenRows, writtenRowText } from '../../shared/tying/rows/written-rows.ts';
import { arbitraryChart } from './arbitrary-chart.ts';
import { tiled } from './tiled.ts';

fc.configureGlobal({ seed: 8_300 });

/** Names that a reader could trip over: figures, commas' neighbours, brackets. */
const names = ['Moss', 'Bark 2', 'Night (dark)', 'Ganz frei'];

/** The cells of a row in its own direction, put back from left to right. */
function leftToRight(cells: readonly number[], goesRight: boolean): number[] {
  return goesRight ? [...cells] : cells.toReversed();
}

function rowOf({ cells, columns }: Chart, row: number): number[] {
  return [...cells.subarray(row * columns, (row + 1) * columns)];
}

describe('written rows are read back', () => {
  it.each(['en', 'de'] as const)(
    'in whole words (%s), and give the same chart and lift marks',
    (language) => {
      const words = rowsWords[language];
      fc.assert(
        fc.property(arbitraryChart(), ({ design, chart }) => {
          const yarns = design.yarns.map((yarn, i) => ({ ...yarn, name: names[i]! }));
          const codes = new Map(yarns.map(({ id, name }) => [name, codeOf(id)]));
          codes.set(words.bare, BARE);
          for (const row of writtenRows(chart, new Map(yarns.map((yarn) => [yarn.id, yarn])))) {
            const text = writtenRowText(row, words);
            const [heading, rest] = text.split(': ') as [string, string];
            expect(heading).toBe(words.heading(row.row, row.goesRight));
            if (rest === words.allBare) {
              expect(rowOf(chart, row.row - 1).every((code) => code === BARE)).toBe(true);
              continue;
            }
            const [parts, lifts] = rest.split('; ');
            const cells = parts!.split(', ').flatMap((part) => {
              const [, count, name, from, to] = /^(\d+) (.+) \((\d+)(?:-(\d+))?\)$/.exec(part)!;
              expect(Math.abs(Number(to ?? from) - Number(from)) + 1).toBe(Number(count));
              return Array.from({ length: Number(count) }, () => codes.get(name!)!);
            });
            expect(leftToRight(cells, row.goesRight)).toEqual(rowOf(chart, row.row - 1));
            const told = lifts ? (lifts.match(/\d+/g) ?? []).map(Number) : [];
            expect(told).toEqual(liftsOf(cells, row.goesRight, chart.columns));
          }
        }),
        { numRuns: 300 },
      );
    },
  );

  it('in the short form, and give the same chart and lift marks', () => {
    let repeated = 0;
    fc.assert(
      fc.property(arbitraryChart({ maxColumns: 30 }), fc.integer({ min: 2, max: 8 }), (drawn, cords) => {
        const { design, chart } = tiled(drawn, cords);
        // Letters and digits, as designs may have them.
        const symbols = ['7', 'A', '0', '&'];
        const symbolOf = (id: Yarn['id']) => symbols[design.yarns.findIndex((yarn) => yarn.id === id)]!;
        const codes = new Map(design.yarns.map(({ id }) => [symbolOf(id), codeOf(id)]));
        codes.set('–', BARE);
        for (const row of writtenRows(chart, new Map(design.yarns.map((yarn) => [yarn.id, yarn])))) {
          const [counts, lifts] = compactRowText(row, symbolOf).split('; ');
          const [, number, way, brackets, times = '1', once, out] =
            /^(\d+) (.) (?:((\d+)×\((.*)\))|(.*))$/.exec(counts!)!;
          expect(Number(number)).toBe(row.row);
          expect(way).toBe(row.goesRight ? '→' : '←');
          const tied = (once ?? out!).split(' ').flatMap((word) => {
            const [count, symbol] = word.split('×');
            return Array.from({ length: Number(count) }, () => codes.get(symbol!)!);
          });
          const cells = Array<number[]>(Number(times)).fill(tied).flat();
          if (brackets) {
            repeated++;
            const all = row.parts.map(
              ({ yarn, count }) => `${count}×${yarn === null ? '–' : symbolOf(yarn)}`,
            );
            expect(brackets.length).toBeLessThan(all.join(' ').length);
            expect(Number(times)).toBeGreaterThanOrEqual(3);
          }
          expect(leftToRight(cells, row.goesRight)).toEqual(rowOf(chart, row.row - 1));
          expect(lifts ? lifts.split(' ').map(Number) : []).toEqual(
            liftsOf(cells, row.goesRight, chart.columns),
          );
        }
      }),
      { numRuns: 600 },
    );
    expect(repeated).toBeGreaterThan(50);
  });
});

/** The first cord of each new yarn in tying order, but for the one at the row's own edge. `cells` in tying order. */
function liftsOf(cells: readonly number[], goesRight: boolean, columns: number): number[] {
  return cells.flatMap((code, at) =>
    at > 0 && code !== BARE && code !== cells[at - 1] ? [goesRight ? at + 1 : columns - at] : [],
  );
}
