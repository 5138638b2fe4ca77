/**
 * The vertical double half hitch in a row that goes right. Along the yarn: behind the cord; over its front, the first
 * turn; behind the yarn itself and behind the cord; over its front again, the second turn; behind the cord, and out
 * over the yarn itself, between the two turns. That is a clove hitch around the cord, seen from its turns.
 * Common practice, no source; a clove hitch as two half hitches: The Ashley Book of Knots, nos. 11 and 1176-1180.
 */
import { PICTURE_MM, type Picture } from './picture.ts';
import { diametersMm, type Material, type Strand, type Waypoint } from './strand.ts';

/** Strands that go on beyond a picture stop here, left and right of its middle. */
const EDGE_MM = 18.6;

/** Heights: the cord's is 0. */
const FRONT = 1;
const BEHIND = -1;
const FAR_BEHIND = -2;

/** How far a tight turn reaches to both sides of its cord's middle. */
const REACH_MM = diametersMm.cord / 2 + 0.8;

/** Distance of the two turns of a tight knot. */
const TURNS_MM = 3.2;

export function cordAt(x: number, name = 'cord', endY: number = PICTURE_MM): Strand {
  return {
    name,
    material: 'cord',
    through: [
      [x, 0, 0],
      [x, endY, 0],
    ],
  };
}

export const layingBehind: Picture = {
  strands: [
    cordAt(0),
    {
      name: 'yarn',
      material: 'yarn',
      through: [
        [-EDGE_MM, 15, BEHIND],
        [-8, 15.4, BEHIND],
        [6, 15.2, BEHIND],
        [13.4, 13.4, BEHIND],
      ],
      to: 'moves',
    },
  ],
  words: [
    { x: 3.4, y: 31.6, word: 'holding-hand', align: 'left' },
    { x: EDGE_MM, y: 9.6, word: 'turning-hand', align: 'right' },
  ],
};

export const firstTurn: Picture = {
  strands: [
    cordAt(0),
    {
      name: 'yarn',
      material: 'yarn',
      through: [
        [-EDGE_MM, 17, BEHIND],
        [-9, 16.6, BEHIND],
        [0, 15.2, BEHIND],
        [7, 12, BEHIND],
        [9.2, 8, 0],
        [5, 5, FRONT],
        [-4, 5.8, FRONT],
        [-9.4, 10.4, 0],
        [-8.6, 18, FAR_BEHIND],
        [0, 23.4, FAR_BEHIND],
        [13.4, 26.6, FAR_BEHIND],
      ],
      to: 'moves',
    },
  ],
};

export const secondTurn: Picture = {
  strands: [
    cordAt(0),
    {
      name: 'yarn',
      material: 'yarn',
      through: [
        [-EDGE_MM, 9.4, BEHIND],
        [-9, 9, BEHIND],
        [0, 7.6, BEHIND],
        [REACH_MM + 1.5, 5.8, BEHIND],
        [REACH_MM + 0.7, 3.6, 0],
        [0, 3, FRONT],
        [-REACH_MM - 0.9, 4.6, 0],
        [-REACH_MM - 1.7, 7.4, FAR_BEHIND],
        [-REACH_MM - 0.4, 10.8, FAR_BEHIND],
        [0, 13.6, FAR_BEHIND],
        [7, 14.8, FAR_BEHIND],
        [10.2, 19.6, -0.5],
        [5.6, 24.4, FRONT],
        [-4, 25.8, FRONT],
        [-9.2, 23.4, 0],
        [-6, 19.8, BEHIND],
        [0, 19.2, BEHIND],
        [7, 19.4, 0],
        [14.6, 19.8, FRONT],
      ],
      to: 'moves',
    },
  ],
};

/** The front of a tight knot at a cord: its two turns, rising with the row. */
export function tightKnot(x: number, y: number, material: Material, name = 'knot'): Strand[] {
  return [-0.5, 0.5].map((share, i): Strand => {
    const at = y + share * TURNS_MM;
    return {
      name: `${name}, ${i === 0 ? 'first' : 'second'} turn`,
      material,
      through: [
        [x - REACH_MM + 0.9, at + 0.3, FRONT],
        [x, at + 0.2, FRONT],
        [x + REACH_MM - 0.9, at - 0.4, FRONT],
      ],
      from: 'round',
      to: 'round',
    };
  });
}

/** What lies behind the work between and beside knots. */
export function behind(
  name: string,
  material: Material,
  through: readonly (readonly [number, number])[],
  ends: Pick<Strand, 'from' | 'to'> = {},
  height = BEHIND,
): Strand {
  return { name, material, through: through.map(([x, y]): Waypoint => [x, y, height]), ...ends };
}

export const drawnTight: Picture = {
  strands: [
    cordAt(-7, 'cord'),
    cordAt(9, 'next cord'),
    ...tightKnot(-7, 15, 'yarn'),
    behind(
      'yarn',
      'yarn',
      [
        [-EDGE_MM, 15.6],
        [-12, 15.4],
        [-7, 15],
        [2, 15.6],
        [9, 15.4],
        [14.6, 14.6],
      ],
      { to: 'moves' },
    ),
  ],
};
