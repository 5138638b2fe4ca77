import type { Design } from '../design/design.ts';
import { drawn } from './drawn.ts';
import { below, both, box, circle, polygon, type Shape, waves } from './shapes.ts';

/** 60 cords, 72 rows: a lighthouse, with long even runs and a few small places. */
export function lampAtHarrowPoint(): Design {
  const tower = polygon([14, 50], [16, 15], [24, 15], [26, 50]);
  const band = (top: number): Shape => both(tower, box(0, top, 60, top + 6));
  const sea = below(waves(46, [30, 0.5, 0]));
  const crest = (y: number, shift: number): Shape =>
    both(sea, (x, yy) => Math.abs(yy - waves(y, [22, 0.9, shift])(x)) < 0.75);
  return drawn({
    title: 'Lamp at Harrow Point',
    notes: 'The lamp was lit for the last boat home.',
    columns: 60,
    rows: 72,
    yarns: [
      ['Linen', '#e6ddc9', 'a'],
      ['Dusk', '#62769f', 'b'],
      ['Tide', '#28455f', 'c'],
      ['Apricot', '#e0955a', 'd'],
      ['Madder', '#9e3329', 'e'],
      ['Coal', '#2b2a2d', 'f'],
      ['Chalk', '#fffdf6', 'g'],
    ],
    fringe: { shape: 'curve', longMm: 180, shortMm: 110 },
    shapes: [
      [circle(43, 27, 9.5), 3],
      [sea, 2],
      [both(sea, (_x, y) => y < 49), 1],
      [crest(54, 0.2), 1],
      [crest(60, 0.6), 1],
      [both(sea, box(37, 51, 49, 52)), 3],
      [both(sea, box(39, 57, 47, 58)), 3],
      [both(sea, box(41, 63, 46, 64)), 3],
      [tower, 6],
      [band(16), 4],
      [band(28), 4],
      [band(40), 4],
      [box(13, 13.4, 27, 15.4), 5],
      [box(16, 8.6, 24, 13.4), 3],
      [box(19, 8.6, 21, 13.4), 5],
      [polygon([15, 8.6], [20, 3.6], [25, 8.6]), 5],
      [
        below((x) =>
          x < 33 ? 48 + Math.max(0, x - 24) * 0.9 + Math.sin(x * 0.9) * 0.8 : 56 + (x - 33) * 1.6,
        ),
        5,
      ],
    ],
  });
}
