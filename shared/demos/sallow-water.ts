import type { Design } from '../design/design.ts';
import { drawn } from './drawn.ts';
import { below, both, box, circle, ellipse, polygon, type Shape, stroke, waves } from './shapes.ts';

/** 150 cords, 200 rows: a river valley at dawn, for many weeks at the dowel. */
export function sallowWater(): Design {
  const bird = (x: number, y: number, s: number): Shape =>
    stroke(
      1.2,
      [x - 4 * s, y - 1.6 * s],
      [x - 1.6 * s, y - 2 * s],
      [x, y],
      [x + 1.6 * s, y - 2 * s],
      [x + 4 * s, y - 1.6 * s],
    );
  const reed = (x: number, top: number, lean: number): Shape => {
    const stem = stroke(1.3, [x, 193], [x + lean * 0.4, (193 + top) / 2], [x + lean, top]);
    const head = ellipse(x + lean, top, 1.6, 6);
    return (px, py) => stem(px, py) || head(px, py);
  };
  const river: Shape = (x, y) => {
    if (y < 118) return false;
    const t = (y - 118) / 74;
    const middle = 82 + 26 * Math.sin(t * 4.4) * (0.35 + t) - 10 * t;
    return Math.abs(x - middle) < 3 + 34 * t ** 1.5;
  };
  const glint = (y: number, from: number, to: number): Shape => both(river, box(from, y, to, y + 1));
  const nearBank = below((x) => 176 + 10 * Math.sin(x / 23 + 2) - Math.max(0, (x - 105) * 0.5));
  return drawn({
    title: 'Sallow Water',
    notes: 'A river valley before the sun is up.',
    columns: 150,
    rows: 200,
    yarns: [
      ['Milk', '#efe7d6', 'a'],
      ['Rose', '#e2b8a2', 'b'],
      ['Apricot', '#e0955a', 'c'],
      ['Mist', '#b4bfc7', 'd'],
      ['Slate', '#7a8ea0', 'e'],
      ['Pine', '#3f5f62', 'f'],
      ['Sage', '#93a078', 'g'],
      ['Moss', '#5d7443', 'h'],
      ['River', '#4d7c99', 'i'],
      ['Coal', '#2b2a2d', 'j'],
    ],
    fringe: { shape: 'inverted-v', longMm: 240, shortMm: 140 },
    shapes: [
      [below(waves(26, [90, 3, 0.1], [34, 1.2, 0.4])), 1],
      [
        both(
          below(waves(40, [70, 2, 0.6], [25, 0.8, 0.1])),
          below(() => 0),
        ),
        0,
      ],
      [below(waves(52, [110, 3, 0.3], [30, 1.4, 0.8])), 1],
      [circle(96, 62, 17), 2],
      [box(62, 66, 112, 67), 0],
      [box(80, 71, 124, 72.5), 0],
      [below(waves(84, [120, 9, 0.15], [47, 5, 0.35], [19, 1.6, 0])), 3],
      [below(waves(98, [95, 8, 0.6], [38, 4, 0.2], [13, 1, 0.5])), 4],
      [below(waves(112, [140, 7, 0.05], [52, 3.5, 0.7], [9, 0.7, 0])), 5],
      [below(waves(120, [130, 4, 0.4], [44, 2, 0.15])), 6],
      [polygon([0, 128], [40, 134], [58, 150], [30, 176], [0, 180]), 7],
      [polygon([150, 124], [118, 131], [104, 146], [128, 164], [150, 168]), 7],
      [river, 8],
      [glint(126, 70, 100), 0],
      [glint(134, 96, 112), 3],
      [glint(141, 88, 104), 0],
      [glint(150, 70, 96), 3],
      [glint(158, 46, 80), 0],
      [glint(166, 52, 92), 3],
      [nearBank, 7],
      [below((x) => 187 + 4 * Math.sin(x / 11) - Math.max(0, (x - 118) * 0.22)), 5],
      [bird(38, 40, 1.3), 9],
      [bird(54, 32, 1), 9],
      [bird(27, 54, 0.9), 9],
      [reed(10, 138, 3), 9],
      [reed(16, 150, -2), 9],
      [reed(21, 130, 4), 9],
      [reed(132, 142, -4), 9],
      [reed(139, 128, 2), 9],
      [reed(145, 150, -2), 9],
    ],
  });
}
