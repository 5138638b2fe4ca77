/**
 * Mounting a cut cord with a lark's head, its bar in front. From the fold outwards each leg goes behind the dowel, over
 * its front, and through the fold: behind the bar. Common practice, no source.
 */
import type { Picture } from './picture.ts';
import type { Strand, Waypoint } from './strand.ts';

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
        [-3.4, 33, 2],
        [-3.4, 20, 2],
        [-3.6, 6, 2],
        [-6.2, 2.6, 0.5],
        [-9, 6, -1],
        [-9.2, 15, -1],
        [-6.6, 22.4, -1],
      ],
      [0, 25, -1],
    ),
  ],
};

/** The fold is brought forward under the dowel, and the ends go back through it. */
export const endsThroughFold: Picture = {
  strands: [
    dowel,
    cutCord(
      [
        [-3, 33, -1],
        [-3, 27, -1],
        [-3, 21, 0],
        [-3.2, 13, 1.5],
        [-3.4, 6, 2],
        [-5.8, 2.6, 0.5],
        [-8.4, 6, -1],
        [-8.6, 14, -1],
        [-6.8, 21, 1],
      ],
      [0, 24, 2],
    ),
  ],
};

/** Drawn down: the bar lies close under the dowel, and the legs hang side by side as two cords. */
export const headDrawnTight: Picture = {
  strands: [
    dowel,
    cutCord(
      [
        [-5.4, 33, -1],
        [-5.2, 25, -1],
        [-3.2, 18.4, -1],
        [-2.7, 12, 1.2],
        [-2.8, 6, 2],
        [-5, 3.1, 0.5],
        [-7.2, 6, -1],
        [-7.2, 11.6, -1],
        [-5.6, 15.6, 1],
      ],
      [0, 16.6, 2],
    ),
  ],
};
