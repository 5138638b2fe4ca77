import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../../shared/chart/tools/cell.ts';
import { lineCells } from '../../../../shared/chart/tools/line-cells.ts';
import { lineStrips } from '../../../../shared/chart/tools/line-strips.ts';
import { nibCells } from '../../../../shared/chart/tools/nib.ts';
import { strokeStrips } from '../../../../shared/chart/tools/stroke-strips.ts';
import { lettersOfStrips } from '../strips-letters.ts';

const cell = (row: number, column: number): Cell => ({ row, column });
const size = { columns: 8, rows: 5 };

describe('a stroke', () => {
  it('draws the nib all along its way, each row of it as one strip', () => {
    const way = [...lineCells(cell(1, 1), cell(1, 4)), ...lineCells(cell(1, 4), cell(3, 6)).slice(1)];
    const strips = strokeStrips(way, 2, nibCells(2, 'square'));
    expect(lettersOfStrips(strips, size)).toEqual([
      '........',
      '.bbbbb..',
      '.bbbbbb.',
      '.....bbb',
      '......bb',
    ]);
    expect([...strips]).toEqual([1, 1, 5, 2, 2, 1, 6, 2, 3, 5, 3, 2, 4, 6, 2, 2]);
  });

  it('is thin one way and thick the other with a flat nib', () => {
    const nib = nibCells(3, 'flat-down');
    expect(lettersOfStrips(lineStrips(cell(2, 1), cell(2, 6), 1, nib), size)).toEqual([
      '........',
      '.aaaaaa.',
      '.aaaaaa.',
      '.aaaaaa.',
      '........',
    ]);
    expect(lettersOfStrips(lineStrips(cell(1, 4), cell(3, 4), 1, nib), size)).toEqual([
      '....a...',
      '....a...',
      '....a...',
      '....a...',
      '....a...',
    ]);
  });

  it('reaches beyond the chart, and comes back', () => {
    const strips = strokeStrips([cell(-1, -1), cell(0, 0)], 1, nibCells(3, 'square'));
    expect([...strips]).toEqual([-2, -2, 3, 1, -1, -2, 4, 1, 0, -2, 4, 1, 1, -1, 3, 1]);
  });

  it('keeps apart what lies apart, and does not mind a cell that comes twice', () => {
    const strips = strokeStrips([cell(0, 5), cell(0, 0), cell(0, 5)], 1, nibCells(1, 'round'));
    expect([...strips]).toEqual([0, 0, 1, 1, 0, 5, 1, 1]);
  });

  it('of no cells draws nothing', () => {
    expect(strokeStrips([], 1, nibCells(3, 'round'))).toHaveLength(0);
  });

  it('of 200 cells in one jump is one strip a row, even with the widest nib', () => {
    const strips = lineStrips(cell(10, 0), cell(110, 199), 1, nibCells(32, 'round'));
    expect(strips.length / 4).toBe(101 + 31);
  });
});
