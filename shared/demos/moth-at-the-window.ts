import type { Design } from '../design/design.ts';
import { drawn } from './drawn.ts';
import { box, circle, ellipse, mirrored, polygon, stroke } from './shapes.ts';

/** 30 cords, 36 rows: a first piece, with a picture that is the same left and right. */
export function mothAtTheWindow(): Design {
  const upperWing = polygon(
    [15, 15],
    [10, 13.6],
    [5, 11],
    [1, 10],
    [0.8, 12.2],
    [3, 17],
    [6.4, 20],
    [15, 20],
  );
  const wingTip = polygon([4.6, 10.8], [1, 10], [0.8, 12.2], [3, 17], [5.4, 19.2], [4.6, 15.6], [3.8, 13]);
  const lowerWing = polygon([15, 19], [6.4, 20], [5, 23.6], [7.5, 27], [11, 26], [15, 20.5]);
  return drawn({
    title: 'Moth at the window',
    notes: 'An evening piece in five yarns.',
    columns: 30,
    rows: 36,
    yarns: [
      ['Night', '#2f3e5c', 'a'],
      ['Moonlight', '#f0e4bd', 'b'],
      ['Rust', '#b4562f', 'c'],
      ['Bark', '#5b4033', 'd'],
      ['Oat', '#d5b98c', 'e'],
    ],
    fringe: { shape: 'v', longMm: 160, shortMm: 80 },
    shapes: [
      [circle(15, 9.4, 6.6), 1],
      [mirrored(lowerWing, 15), 4],
      [mirrored(upperWing, 15), 2],
      [mirrored(wingTip, 15), 3],
      [mirrored(circle(8.2, 15.8, 1.55), 15), 1],
      [mirrored(circle(8.4, 23.2, 1.6), 15), 2],
      [ellipse(15, 19.5, 1.3, 6.2), 3],
      [mirrored(stroke(1, [14.4, 13.6], [12.4, 10.4], [10.6, 9.6]), 15), 3],
      [box(0, 31, 30, 32), 1],
      [box(0, 33, 30, 36), 4],
    ],
  });
}
