import { describe, expect, it } from 'vitest';
import { BARE, EMPTY } from '../../../shared/design/codes.ts';
import { codesAllowed, readRow, writeRow } from '../../../shared/design/row-text.ts';

const allowed = codesAllowed([{ id: 'y1' }, { id: 'y2' }, { id: 'y12' }]);

describe('a row of cells', () => {
  it('is written as counts of yarns, of empty and of bare cells', () => {
    expect(writeRow(Uint8Array.of(1, 1, 1, 12, EMPTY, EMPTY, BARE))).toBe('3y1 1y12 2. 1-');
  });

  it('is read left to right', () => {
    expect(readRow('3y1 1y12 2. 1-', 7, allowed)).toEqual(Uint8Array.of(1, 1, 1, 12, EMPTY, EMPTY, BARE));
  });

  it('may name one yarn twice running, as a person does who edits by hand', () => {
    expect(readRow('1y1 2y1', 3, allowed)).toEqual(Uint8Array.of(1, 1, 1));
  });

  it.each([
    ['2y1', 'has 2 cells instead of 3'],
    ['1y1', 'has 1 cell instead of 3'],
    ['3y1 1y2', 'has 4 cells instead of 3'],
    ['99999999y1', 'has more cells than a chart can have, at character 1'],
    ['', 'is empty'],
    ['3', 'breaks off at its end'],
    ['3y', 'breaks off at its end'],
    ['2y1 ', 'breaks off at its end'],
    [' 3y1', "can't be read at character 1"],
    ['2y1  1y2', "can't be read at character 5"],
    ['2y1\t1y2', "can't be read at character 4"],
    ['y1 2y1', "can't be read at character 1"],
    ['3x1', "can't be read at character 2"],
    ['3Y1', "can't be read at character 2"],
    ['-3y1', "can't be read at character 1"],
    ['3.0', "can't be read at character 3"],
    ['٣y1', "can't be read at character 1"],
    ['0y1 3y2', 'has a count that begins with 0, at character 1'],
    ['1y1 02y2', 'has a count that begins with 0, at character 5'],
    ['3y3', "names yarn y3, which is not in the design's list of yarns"],
    ['3y0', "names yarn y0, which is not in the design's list of yarns"],
    ['3y01', "names yarn y01, which is not in the design's list of yarns"],
    ['3y255', "names yarn y255, which is not in the design's list of yarns"],
    ['3y257', "names yarn y257, which is not in the design's list of yarns"],
    ['3y1234', "names yarn y123, which is not in the design's list of yarns"],
  ])("of three cords written '%s' is refused: it %s", (text, fault) => {
    expect(readRow(text, 3, allowed)).toBe(fault);
  });
});
