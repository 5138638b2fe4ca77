import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { cutMasks, invertMask, joinMasks, movedMask } from '../../../../shared/chart/patch/combine-masks.ts';
import { isChosen, type Mask, maskOf } from '../../../../shared/chart/patch/mask.ts';
import {
  maskAll,
  maskOfRectangle,
  maskOfTouching,
  maskOfYarn,
} from '../../../../shared/chart/patch/mask-of-cells.ts';
import { maskOfFreehand } from '../../../../shared/chart/patch/mask-of-freehand.ts';
import type { Cell } from '../../../../shared/chart/tools/cell.ts';
import { BARE } from '../../../../shared/design/codes.ts';
import { designFromLetters } from '../../../notation.ts';
import { lettersOfMarks } from '../strips-letters.ts';

const cell = (row: number, column: number): Cell => ({ row, column });
const size = { columns: 6, rows: 5 };
const letters = (mask: Mask) => lettersOfMarks(mask.chosen, mask.columns);

function maskFrom(rows: readonly string[]): Mask {
  const chosen = Uint8Array.from(rows.join(''), (letter) => (letter === 'x' ? 1 : 0));
  return maskOf(chosen, { columns: rows[0]!.length, rows: rows.length });
}

describe('a patch', () => {
  it('may be a rectangle between any two corners, as far as the chart goes', () => {
    const mask = maskOfRectangle(cell(3, 9), cell(2, 4), size);
    expect(letters(mask)).toEqual(['......', '......', '....xx', '....xx', '......']);
    expect(mask.bounds).toEqual({ top: 2, left: 4, bottom: 3, right: 5 });
    expect(maskOfRectangle(cell(-3, -3), cell(-1, 9), size).bounds).toBeNull();
  });

  it('may be all that shows a yarn, or the cord', () => {
    const chart = flatten(
      designFromLetters([
        ['ab-b', 'aabb'],
        ['....', '..a.'],
      ]),
    );
    expect(letters(maskOfYarn(chart, 2))).toEqual(['.x.x', '...x']);
    expect(letters(maskOfYarn(chart, BARE))).toEqual(['..x.', '....']);
    expect(maskOfYarn(chart, 9).bounds).toBeNull();
  });

  it('may be all that touches a cell and looks like it', () => {
    const chart = flatten(designFromLetters(['abba', 'aabb', 'baab']));
    const mask = maskOfTouching(chart, cell(2, 2));
    expect(letters(mask)).toEqual(['x...', 'xx..', '.xx.']);
    expect(mask.bounds).toEqual({ top: 0, left: 0, bottom: 2, right: 2 });
    expect(maskOfTouching(chart, cell(3, 0)).bounds).toBeNull();
  });

  it('may be the whole chart', () => {
    expect(letters(maskAll(size))).toEqual(Array(5).fill('xxxxxx'));
  });

  it('has a cell chosen or not; what is outside the chart is not', () => {
    const mask = maskAll(size);
    expect(isChosen(mask, cell(4, 5))).toBe(true);
    expect(isChosen(mask, cell(4, 6))).toBe(false);
    expect(isChosen(maskOfRectangle(cell(0, 0), cell(1, 1), size), cell(2, 0))).toBe(false);
  });
});

describe('a patch drawn by hand', () => {
  it('is what the outline encloses, and the outline', () => {
    const way = [cell(0, 2), cell(2, 0), cell(4, 2), cell(2, 4)];
    expect(letters(maskOfFreehand(way, size))).toEqual(['..x...', '.xxx..', 'xxxxx.', '.xxx..', '..x...']);
  });

  it('is closed from its last cell to its first', () => {
    const way = [cell(0, 0), cell(0, 1), cell(0, 2), cell(0, 3), cell(1, 3), cell(2, 3), cell(3, 3)];
    expect(letters(maskOfFreehand(way, size))).toEqual(['xxxx..', '.xxx..', '..xx..', '...x..', '......']);
  });

  it('leaves out what an outline that crosses itself goes around twice', () => {
    const ring = [cell(0, 0), cell(0, 5), cell(4, 5), cell(4, 0), cell(0, 0)];
    const hole = [cell(1, 1), cell(1, 4), cell(3, 4), cell(3, 1), cell(1, 1)];
    expect(letters(maskOfFreehand([...ring, ...hole], size))).toEqual([
      'xxxxxx',
      'xxxxxx',
      'xx..xx',
      'xxxxxx',
      'xxxxxx',
    ]);
  });

  it('may lead out of the chart and back', () => {
    const way = [cell(-3, 3), cell(-3, 20), cell(2, 20), cell(2, 3)];
    expect(letters(maskOfFreehand(way, size))).toEqual(['...xxx', '...xxx', '...xxx', '......', '......']);
  });

  it('may be one cell, one stroke, or nothing', () => {
    expect(letters(maskOfFreehand([cell(1, 1)], size))[1]).toBe('.x....');
    expect(letters(maskOfFreehand([cell(1, 1), cell(1, 4)], size))[1]).toBe('.xxxx.');
    expect(maskOfFreehand([], size).bounds).toBeNull();
  });
});

describe('patches', () => {
  const a = maskFrom(['xx..', 'xx..', '....']);
  const b = maskFrom(['....', '.xx.', '.xx.']);

  it('are added to one another and taken away', () => {
    expect(letters(joinMasks(a, b))).toEqual(['xx..', 'xxx.', '.xx.']);
    expect(letters(cutMasks(a, b))).toEqual(['xx..', 'x...', '....']);
    expect(cutMasks(a, a).bounds).toBeNull();
    expect(() => joinMasks(a, maskAll(size))).toThrow('two charts');
  });

  it('may be turned into all the rest', () => {
    expect(letters(invertMask(a))).toEqual(['..xx', '..xx', 'xxxx']);
  });

  it('move along with what they hold, as far as the chart goes', () => {
    expect(letters(movedMask(a, 1, 1))).toEqual(['....', '.xx.', '.xx.']);
    expect(letters(movedMask(b, 2, -2))).toEqual(['...x', '....', '....']);
    expect(movedMask(a, 4, 0).bounds).toBeNull();
  });
});
