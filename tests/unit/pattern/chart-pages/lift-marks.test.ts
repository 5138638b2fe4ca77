import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import { cellInks } from '../../../../shared/pattern/chart-pages/cell-inks.ts';
import { hasLifts, liftMarks } from '../../../../shared/pattern/chart-pages/lift-marks.ts';
import { designFromLetters } from '../../../notation.ts';

/** Places of the marks as 'row cord corner', counted from 1; `width` is that of cells 4 mm high. */
function marksOf(letters: string[], startCorner: 'top-left' | 'top-right' = 'top-left', width = 4): string[] {
  const design = { ...designFromLetters(letters), startCorner };
  const chart = flatten(design);
  const sheets = liftMarks({
    chart,
    x: 0,
    y: 0,
    cellWidth: width,
    cellHeight: 4,
    across: { first: 0, end: chart.columns },
    down: { first: 0, end: chart.rows },
    cellInks: cellInks(design.yarns),
  });
  return sheets
    .flatMap(({ codes, columns, inks }) =>
      [...codes].flatMap((code, i) => {
        const corner = { '\u25e4': 'left', '\u25e5': 'right' }[inks[code]?.symbol ?? ''];
        return corner ? [`${Math.floor(i / columns) + 1} ${(i % columns) + 1} ${corner}`] : [];
      }),
    )
    .sort();
}

describe('lift marks', () => {
  it('stand where a new yarn begins, in the corner that the row comes to first', () => {
    expect(marksOf(['aabb', 'aabb'])).toEqual(['1 3 left', '2 2 right']);
  });

  it('stand the other way round with the start corner top right', () => {
    expect(marksOf(['aabb', 'aabb'], 'top-right')).toEqual(['1 2 right', '2 3 left']);
  });

  it('are not needed where a row begins, nor on bare cords, but behind them', () => {
    expect(marksOf(['a..a'])).toEqual(['1 4 left']);
    expect(marksOf(['..aa'])).toEqual(['1 3 left']);
    expect(marksOf(['aaaa'])).toEqual([]);
  });

  it('lie in the corner of the cell, however wide it is', () => {
    const design = designFromLetters(['ab']);
    const chart = flatten(design);
    const [sheet] = liftMarks({
      chart,
      x: 20,
      y: 30,
      cellWidth: 7,
      cellHeight: 4,
      across: { first: 0, end: 2 },
      down: { first: 0, end: 1 },
      cellInks: cellInks(design.yarns),
    });
    // A symbol stands in the middle of its cell: the second one's left edge is at 27 mm.
    const left = sheet!.x + 1.5 * sheet!.cellWidth - sheet!.symbolMm! / 2;
    expect(left).toBeCloseTo(27, 9);
    expect(sheet!.y + sheet!.cellHeight / 2 - sheet!.symbolMm! / 2).toBeCloseTo(30, 9);
  });

  it('are told of in the key only where a chart has any', () => {
    expect(hasLifts(flatten(designFromLetters(['aaa', 'bbb'])))).toBe(false);
    expect(hasLifts(flatten(designFromLetters(['aab'])))).toBe(true);
  });
});
