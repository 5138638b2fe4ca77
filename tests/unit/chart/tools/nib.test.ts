import { describe, expect, it } from 'vitest';
import { type NibShape, nibCells } from '../../../../shared/chart/tools/nib.ts';
import { stripsOfCells } from '../../../../shared/chart/tools/strips.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { lettersOfStrips } from '../strips-letters.ts';

/** The nib pressed on the cell of row 3, cord 3 of a chart of 6 cords and rows. */
function pressed(width: number, shape: NibShape): string[] {
  const cells = nibCells(width, shape).map(({ row, column }) => ({ row: row + 2, column: column + 2 }));
  return lettersOfStrips(stripsOfCells(cells, 1), { columns: 6, rows: 6 });
}

describe('a nib', () => {
  it('of one cell is that cell, whatever its shape', () => {
    for (const shape of ['round', 'square', 'flat-across', 'flat-down'] as const) {
      expect(nibCells(1, shape)).toEqual([{ row: 0, column: 0 }]);
    }
  });

  it('may be square', () => {
    expect(pressed(3, 'square')).toEqual(['......', '.aaa..', '.aaa..', '.aaa..', '......', '......']);
  });

  it('may be round', () => {
    expect(pressed(3, 'round')).toEqual(['......', '..a...', '.aaa..', '..a...', '......', '......']);
    expect(pressed(5, 'round')).toEqual(['.aaa..', 'aaaaa.', 'aaaaa.', 'aaaaa.', '.aaa..', '......']);
  });

  it('may be flat, across or down', () => {
    expect(pressed(4, 'flat-across')).toEqual(['......', '......', '.aaaa.', '......', '......', '......']);
    expect(pressed(3, 'flat-down')).toEqual(['......', '..a...', '..a...', '..a...', '......', '......']);
  });

  it('of an even width reaches one cell more to the right and down', () => {
    expect(pressed(2, 'round')).toEqual(['......', '......', '..aa..', '..aa..', '......', '......']);
    expect(pressed(4, 'round')).toEqual(['......', '..aa..', '.aaaa.', '.aaaa.', '..aa..', '......']);
  });

  it(`is at most ${limits.nibCells} cells wide`, () => {
    expect(nibCells(limits.nibCells, 'square')).toHaveLength(limits.nibCells ** 2);
    expect(() => nibCells(limits.nibCells + 1, 'square')).toThrow(RangeError);
    expect(() => nibCells(0, 'round')).toThrow(RangeError);
    expect(() => nibCells(1.5, 'round')).toThrow(RangeError);
  });
});
