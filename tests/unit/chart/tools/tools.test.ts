import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Cell } from '../../../../shared/chart/tools/cell.ts';
import { lineCells } from '../../../../shared/chart/tools/line-cells.ts';
import { paintCells } from '../../../../shared/chart/tools/paint-cells.ts';
import { paintFill } from '../../../../shared/chart/tools/paint-fill.ts';
import { paintRectangle } from '../../../../shared/chart/tools/paint-rectangle.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { apply, type Edit } from '../../../../shared/design/edits.ts';
import { designFromLetters, lettersOfChart } from '../../../notation.ts';

function drawnBy(design: Design, edit: Edit | null): string[] {
  return lettersOfChart(flatten(edit ? apply(design, edit) : design));
}

const cell = (row: number, column: number): Cell => ({ row, column });

describe('a line', () => {
  const places = fc.record({
    row: fc.integer({ min: -50, max: 50 }),
    column: fc.integer({ min: -50, max: 50 }),
  });

  it('goes from one cell to the other without a gap and without a cell too many', () => {
    fc.assert(
      fc.property(places, places, (from, to) => {
        const cells = lineCells(from, to);
        expect(cells[0]).toEqual(from);
        expect(cells.at(-1)).toEqual(to);
        const reach = Math.max(Math.abs(to.row - from.row), Math.abs(to.column - from.column));
        expect(cells).toHaveLength(reach + 1);
        cells.slice(1).forEach((each, i) => {
          expect(Math.abs(each.row - cells[i]!.row)).toBeLessThanOrEqual(1);
          expect(Math.abs(each.column - cells[i]!.column)).toBeLessThanOrEqual(1);
        });
      }),
    );
  });

  it('never strays more than half a cell from the straight one', () => {
    fc.assert(
      fc.property(places, places, (from, to) => {
        const across = to.column - from.column;
        const down = to.row - from.row;
        const long = Math.max(Math.abs(across), Math.abs(down)) || 1;
        for (const { row, column } of lineCells(from, to)) {
          const off = Math.abs((column - from.column) * down - (row - from.row) * across) / long;
          expect(off).toBeLessThanOrEqual(0.5 + 1e-9);
        }
      }),
    );
  });
});

describe('painted cells', () => {
  const design = designFromLetters(['aaaa', 'aaaa', 'aaaa']);

  it('are merged into runs, in whatever order they came, and clipped to the chart', () => {
    const edit = paintCells(
      'picture',
      2,
      [cell(1, 2), cell(1, 1), cell(0, 3), cell(1, 1), cell(1, 9), cell(-1, 0)],
      design,
    );
    expect([...edit!.runs]).toEqual([0, 3, 1, 2, 1, 1, 2, 2]);
    expect(drawnBy(design, edit)).toEqual(['aaab', 'abba', 'aaaa']);
  });

  it('do not run on from the end of one row into the next', () => {
    const edit = paintCells('picture', 2, [cell(0, 3), cell(1, 0)], design);
    expect([...edit!.runs]).toEqual([0, 3, 1, 2, 1, 0, 1, 2]);
  });

  it('are none where the pointer was outside', () => {
    expect(paintCells('picture', 2, [cell(7, 7)], design)).toBeNull();
  });
});

describe('a rectangle', () => {
  it('is filled between any two corners, as far as the chart goes', () => {
    const design = designFromLetters(['aaaa', 'aaaa', 'aaaa']);
    expect(drawnBy(design, paintRectangle('picture', 3, cell(2, 9), cell(1, 1), design))).toEqual([
      'aaaa',
      'accc',
      'accc',
    ]);
    expect(paintRectangle('picture', 3, cell(5, 5), cell(9, 9), design)).toBeNull();
  });
});

describe('a fill', () => {
  it('takes all that is alike and touches by its sides, not by corners', () => {
    const design = designFromLetters(['aabaa', 'abbba', 'bbabb', 'abbba']);
    expect(drawnBy(design, paintFill('picture', 3, cell(0, 2), flatten(design)))).toEqual([
      'aacaa',
      'accca',
      'ccacc',
      'accca',
    ]);
  });

  it('goes by what is seen through the layers', () => {
    const design = designFromLetters([
      ['aaaa', 'aaaa'],
      ['.b..', '.b..'],
    ]);
    expect(drawnBy(design, paintFill('picture', 3, cell(0, 3), flatten(design)))).toEqual(['abcc', 'abcc']);
  });

  it('fills bare cells too, and does nothing where it is filled already', () => {
    const design = designFromLetters(['--a']);
    expect(drawnBy(design, paintFill('picture', 2, cell(0, 0), flatten(design)))).toEqual(['bba']);
    expect(paintFill('picture', 1, cell(0, 2), flatten(design))).toBeNull();
  });

  it('agrees with the plain definition on random charts', () => {
    const letters = fc.array(fc.constantFrom('a', 'b', '-'), { minLength: 48, maxLength: 48 });
    fc.assert(
      fc.property(letters, fc.integer({ min: 0, max: 47 }), (all, place) => {
        const rows = Array.from({ length: 6 }, (_, r) => all.slice(r * 8, r * 8 + 8).join(''));
        const design = designFromLetters(rows);
        const chart = flatten(design);
        const start = cell(Math.floor(place / 8), place % 8);
        const filled = drawnBy(design, paintFill('picture', 3, start, chart)).join('');
        expect(filled).toBe(plainFill(all, place));
      }),
    );
  });
});

/** Spreads to neighbours again and again until nothing changes: slow, and plainly right. */
function plainFill(letters: readonly string[], place: number): string {
  const inside = new Set([place]);
  for (let before = 0; before !== inside.size; ) {
    before = inside.size;
    for (let i = 0; i < letters.length; i++) {
      const beside = [i - 8, i + 8, ...(i % 8 > 0 ? [i - 1] : []), ...(i % 8 < 7 ? [i + 1] : [])];
      if (letters[i] === letters[place] && beside.some((each) => inside.has(each))) inside.add(i);
    }
  }
  return letters.map((letter, i) => (inside.has(i) ? 'c' : letter)).join('');
}
