/**
 * Mounting a cut cord with a lark's head, its bar in front. From the fold outwards each leg goes behind the dowel, over
 * its front, and through the fold: behind the bar. Common practice, no source.
 */
import type { Picture } from './picture.ts';
import type { Strand, Waypoint } from './strand.ts';

/** Heights: the dowel's is 0. What goes under the bar is still nearer than the dowel. */
const FRONT = 2;
const UNDER_BAR = 0.5;
const BEHIND = -1;

const dowel: Strand = {
  name: 'dowel',
  material: 'wood',
  through: [
    [-16, 9, 0],
    [16, 9, 0],
  ],
};

/** From the end of the left leg over the fold to the end of the right one; the half with x > 0 is its mirror. */
function cutCord(left: readonly Waypoint[], bar: Waypoint): Strand {
  const right = left.map(([x, y, height]): Waypoint => [-x, y, height]).reverse();
  return { name: 'cut cord', material: 'cord', through: [...left, bar, ...right] };
}

/** Laid over the dowel from the front: the fold hangs behind it. */
export const foldLaidOver: Picture = {
  strands: [
    dowel,
    cutCord(
      [
        [-3, 33, FRONT],
        [-3, 20, FRONT],
        [-3.4, 6, FRONT],
        [-6.8, 2.6, 0.5],
        [-10.2, 6, BEHIND],
        [-10.8, 14, BEHIND],
        [-8, 21.6, BEHIND],
      ],
      [0, 25.4, BEHIND],
    ),
  ],
};

/** The fold is brought forward under the dowel, and the ends go back through it. */
export const endsThroughFold: Picture = {
  strands: [
    dowel,
    cutCord(
      [
        [-3, 33, UNDER_BAR],
        [-3, 27, UNDER_BAR],
        [-3, 21, UNDER_BAR],
        [-3.2, 13, FRONT],
        [-3.4, 6, FRONT],
        [-5.8, 2.6, 0.5],
        [-8.4, 6, BEHIND],
        [-8.6, 14, BEHIND],
        [-6.8, 21, 1],
      ],
      [0, 24, FRONT],
    ),
  ],
};

/** Drawn down: the bar lies close under the dowel, and the legs hang side by side as two cords. */
export const headDrawnTight: Picture = {
  strands: [
    dowel,
    cutCord(
      [
        [-5.4, 33, UNDER_BAR],
        [-5.2, 25, UNDER_BAR],
        [-3.2, 18.4, UNDER_BAR],
        [-2.7, 12, FRONT],
        [-2.8, 6, FRONT],
        [-5, 3.1, 0.5],
        [-7.2, 6, BEHIND],
        [-7.2, 11.6, BEHIND],
        [-5.6, 15.6, 1],
      ],
      [0, 16.6, FRONT],
    ),
  ],
};
