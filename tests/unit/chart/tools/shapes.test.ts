import { describe, expect, it } from 'vitest';
import { ellipseStrips } from '../../../../shared/chart/tools/ellipse-strips.ts';
import type { Outline } from '../../../../shared/chart/tools/outline.ts';
import { rectangleStrips } from '../../../../shared/chart/tools/rectangle-strips.ts';
import { lettersOfStrips } from '../strips-letters.ts';

const filled: Outline = { filled: true, width: 1 };
const outlined = (width: number): Outline => ({ filled: false, width });

type Shape = typeof ellipseStrips;

function drawn(shape: Shape, columns: number, rows: number, outline: Outline): string[] {
  const to = { row: rows - 1, column: columns - 1 };
  return lettersOfStrips(shape({ row: 0, column: 0 }, to, 1, outline), { columns, rows });
}

/** Shapes of several sizes side by side, two cells apart, on the rows of the highest. */
function beside(shape: Shape, sizes: readonly (readonly [number, number])[], outline: Outline): string[] {
  const most = Math.max(...sizes.map(([, rows]) => rows));
  const each = sizes.map(([columns, rows]) => drawn(shape, columns, rows, outline));
  return Array.from({ length: most }, (_, r) =>
    each.map((letters) => letters[r] ?? ' '.repeat(letters[0]!.length)).join('  '),
  );
}

const round = (sizes: readonly number[]) => sizes.map((size): [number, number] => [size, size]);

describe('a rectangle', () => {
  it('is filled between any two corners', () => {
    const strips = rectangleStrips({ row: 2, column: 3 }, { row: 1, column: 1 }, 2, filled);
    expect([...strips]).toEqual([1, 1, 3, 2, 2, 1, 3, 2]);
  });

  it('is an outline that grows inwards', () => {
    expect(
      beside(
        rectangleStrips,
        [
          [5, 4],
          [7, 6],
        ],
        outlined(2),
      ),
    ).toEqual([
      'aaaaa  aaaaaaa',
      'aaaaa  aaaaaaa',
      'aaaaa  aa...aa',
      'aaaaa  aa...aa',
      '       aaaaaaa',
      '       aaaaaaa',
    ]);
  });

  it('of one cell, one row or one cord is all outline', () => {
    expect(
      beside(
        rectangleStrips,
        [
          [1, 1],
          [3, 1],
          [1, 3],
          [2, 3],
          [3, 3],
        ],
        outlined(1),
      ),
    ).toEqual(['a  aaa  a  aa  aaa', '        a  aa  a.a', '        a  aa  aaa']);
  });
});

describe('an ellipse', () => {
  it('touches all four sides of its box, from one cell on', () => {
    expect(beside(ellipseStrips, round([1, 2, 3, 4, 5, 6, 7, 8]), filled)).toEqual([
      'a  aa  .a.  .aa.  .aaa.  .aaaa.  ..aaa..  ..aaaa..',
      '   aa  aaa  aaaa  aaaaa  aaaaaa  .aaaaa.  .aaaaaa.',
      '       .a.  aaaa  aaaaa  aaaaaa  aaaaaaa  aaaaaaaa',
      '            .aa.  aaaaa  aaaaaa  aaaaaaa  aaaaaaaa',
      '                  .aaa.  aaaaaa  aaaaaaa  aaaaaaaa',
      '                         .aaaa.  .aaaaa.  aaaaaaaa',
      '                                 ..aaa..  .aaaaaa.',
      '                                          ..aaaa..',
    ]);
  });

  it('is rounder the larger it is', () => {
    expect(beside(ellipseStrips, round([9, 10, 11, 12]), filled)).toEqual([
      '..aaaaa..  ...aaaa...  ...aaaaa...  ....aaaa....',
      '.aaaaaaa.  ..aaaaaa..  ..aaaaaaa..  ..aaaaaaaa..',
      'aaaaaaaaa  .aaaaaaaa.  .aaaaaaaaa.  .aaaaaaaaaa.',
      'aaaaaaaaa  aaaaaaaaaa  aaaaaaaaaaa  .aaaaaaaaaa.',
      'aaaaaaaaa  aaaaaaaaaa  aaaaaaaaaaa  aaaaaaaaaaaa',
      'aaaaaaaaa  aaaaaaaaaa  aaaaaaaaaaa  aaaaaaaaaaaa',
      'aaaaaaaaa  aaaaaaaaaa  aaaaaaaaaaa  aaaaaaaaaaaa',
      '.aaaaaaa.  .aaaaaaaa.  aaaaaaaaaaa  aaaaaaaaaaaa',
      '..aaaaa..  ..aaaaaa..  .aaaaaaaaa.  .aaaaaaaaaa.',
      '           ...aaaa...  ..aaaaaaa..  .aaaaaaaaaa.',
      '                       ...aaaaa...  ..aaaaaaaa..',
      '                                    ....aaaa....',
    ]);
  });

  it('has an outline of single cells that goes on by sides or corners', () => {
    expect(beside(ellipseStrips, round([1, 2, 3, 4, 5, 6, 7, 8]), outlined(1))).toEqual([
      'a  aa  .a.  .aa.  .aaa.  .aaaa.  ..aaa..  ..aaaa..',
      '   aa  a.a  a..a  a...a  a....a  .a...a.  .a....a.',
      '       .a.  a..a  a...a  a....a  a.....a  a......a',
      '            .aa.  a...a  a....a  a.....a  a......a',
      '                  .aaa.  a....a  a.....a  a......a',
      '                         .aaaa.  .a...a.  a......a',
      '                                 ..aaa..  .a....a.',
      '                                          ..aaaa..',
    ]);
  });

  it('has no square corners in its outline', () => {
    expect(beside(ellipseStrips, round([9, 10, 11, 12]), outlined(1))).toEqual([
      '..aaaaa..  ...aaaa...  ...aaaaa...  ....aaaa....',
      '.a.....a.  ..a....a..  ..a.....a..  ..aa....aa..',
      'a.......a  .a......a.  .a.......a.  .a........a.',
      'a.......a  a........a  a.........a  .a........a.',
      'a.......a  a........a  a.........a  a..........a',
      'a.......a  a........a  a.........a  a..........a',
      'a.......a  a........a  a.........a  a..........a',
      '.a.....a.  .a......a.  a.........a  a..........a',
      '..aaaaa..  ..a....a..  .a.......a.  .a........a.',
      '           ...aaaa...  ..a.....a..  .a........a.',
      '                       ...aaaaa...  ..aa....aa..',
      '                                    ....aaaa....',
    ]);
  });

  it('has an outline as wide as wished, all around', () => {
    expect(beside(ellipseStrips, round([5, 7, 9, 12]), outlined(2))).toEqual([
      '.aaa.  ..aaa..  ..aaaaa..  ....aaaa....',
      'aaaaa  .aaaaa.  .aaaaaaa.  ..aaaaaaaa..',
      'aa.aa  aaa.aaa  aaa...aaa  .aaa....aaa.',
      'aaaaa  aa...aa  aa.....aa  .aa......aa.',
      '.aaa.  aaa.aaa  aa.....aa  aa........aa',
      '       .aaaaa.  aa.....aa  aa........aa',
      '       ..aaa..  aaa...aaa  aa........aa',
      '                .aaaaaaa.  aa........aa',
      '                ..aaaaa..  .aa......aa.',
      '                           .aaa....aaa.',
      '                           ..aaaaaaaa..',
      '                           ....aaaa....',
    ]);
  });

  it('may be flat', () => {
    expect(
      beside(
        ellipseStrips,
        [
          [2, 5],
          [3, 5],
          [5, 3],
          [3, 4],
          [4, 3],
          [7, 4],
          [6, 1],
        ],
        filled,
      ),
    ).toEqual([
      'aa  .a.  .aaa.  .a.  .aa.  .aaaaa.  aaaaaa',
      'aa  aaa  aaaaa  aaa  aaaa  aaaaaaa        ',
      'aa  aaa  .aaa.  aaa  .aa.  aaaaaaa        ',
      'aa  aaa         .a.        .aaaaa.        ',
      'aa  .a.                                   ',
    ]);
  });

  it('may be flat, and outlined', () => {
    expect(
      beside(
        ellipseStrips,
        [
          [2, 5],
          [3, 5],
          [5, 3],
          [3, 4],
          [4, 3],
          [7, 4],
          [12, 5],
        ],
        outlined(1),
      ),
    ).toEqual([
      'aa  .a.  .aaa.  .a.  .aa.  .aaaaa.  ..aaaaaaaa..',
      'aa  a.a  a...a  a.a  a..a  a.....a  .a........a.',
      'aa  a.a  .aaa.  a.a  .aa.  a.....a  a..........a',
      'aa  a.a         .a.        .aaaaa.  .a........a.',
      'aa  .a.                             ..aaaaaaaa..',
    ]);
  });

  it('reaches the sides of its box however flat it is', () => {
    expect(
      beside(
        ellipseStrips,
        [
          [20, 4],
          [30, 5],
        ],
        filled,
      ),
    ).toEqual([
      '...aaaaaaaaaaaaaa...  ......aaaaaaaaaaaaaaaaaa......',
      'aaaaaaaaaaaaaaaaaaaa  .aaaaaaaaaaaaaaaaaaaaaaaaaaaa.',
      'aaaaaaaaaaaaaaaaaaaa  aaaaaaaaaaaaaaaaaaaaaaaaaaaaaa',
      '...aaaaaaaaaaaaaa...  .aaaaaaaaaaaaaaaaaaaaaaaaaaaa.',
      '                      ......aaaaaaaaaaaaaaaaaa......',
    ]);
  });
});
