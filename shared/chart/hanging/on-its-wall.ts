/**
 * The finished hanging on a wall: a wall of the ground's own colour in soft light from above, the hanging's shadow on it, and
 * the hanging. For covers and for the pictures of a shop.
 */
import type { Item, PathStep } from '../../pattern/page/page.ts';
import { inks } from '../../pattern/page/style.ts';
import { darker, lighter, mixed } from '../../pattern/page/tones.ts';
import { hexToOkLab } from '../../yarn/colour.ts';
import { drawHanging, type HangingPicture } from './draw-hanging.ts';
import { type HungGeometry, legsY } from './hung-geometry.ts';
import { type Box, type Place, placeIn } from './place.ts';

export interface HangingOnWall extends Omit<HangingPicture, 'box'> {
  /** The colour of the ground, as #rrggbb: the wall is one that goes with it. */
  readonly ground: string;
  readonly wall: Box;
  /** Kept free around the hanging, in mm on the page. */
  readonly padMm: number;
}

export function drawOnItsWall({ ground, wall, padMm, ...picture }: HangingOnWall): Item[] {
  const box: Box = {
    x: wall.x + padMm,
    y: wall.y + padMm,
    width: wall.width - 2 * padMm,
    height: wall.height - 2 * padMm,
  };
  return [
    ...wallInLight(wallColor(ground), wall),
    ...shadow(picture.geometry, placeIn(box, picture.geometry)),
    ...drawHanging({ ...picture, box }),
  ];
}

/** Paler than a dark ground and deeper than a pale one, so that cords of cotton stand out from it. */
export function wallColor(ground: string): string {
  return hexToOkLab(ground).l > 0.75
    ? mixed(mixed(ground, '#77797a', 0.32), inks.paper, 0.2)
    : mixed(mixed(ground, inks.linen, 0.7), inks.paper, 0.15);
}

/** Bands of light: as many as there are steps of a channel between top and bottom, or a few more. */
const BANDS = 24;

/** Each band reaches down to the foot, so that no seam is seen between two. */
function wallInLight(color: string, { x, y, width, height }: Box): Item[] {
  const top = lighter(color, 0.3);
  const foot = darker(color, 0.07);
  return Array.from({ length: BANDS }, (_, i): Item => {
    const from = (height * i) / BANDS;
    return {
      kind: 'box',
      x,
      y: y + from,
      width,
      height: height - from,
      fill: mixed(top, foot, i / (BANDS - 1)),
    };
  });
}

/** Layers of the shadow, each a little farther off than the one before: where all lie over each other it is deepest. */
const LAYERS = 5;
const SHADOW = { opacity: 0.05, color: '#2a2019', rightMm: 0.5, downMm: 0.75 } as const;

function shadow(geometry: HungGeometry, place: Place): Item[] {
  const { dowel } = geometry;
  return Array.from({ length: LAYERS }, (_, i): Item[] => {
    const [right, down] = [SHADOW.rightMm * (i + 1), SHADOW.downMm * (i + 1)];
    const height = dowel.diameter * place.scale;
    return [
      {
        kind: 'box',
        x: place.x(dowel.x) + right,
        y: place.y(dowel.y) + down,
        width: dowel.length * place.scale,
        height,
        radius: height / 2,
        fill: SHADOW.color,
        opacity: SHADOW.opacity,
      },
      {
        kind: 'path',
        steps: outline(geometry, place, right, down),
        fill: SHADOW.color,
        opacity: SHADOW.opacity,
      },
    ];
  }).flat();
}

/** From under the dowel down to the ends of the fringe. */
function outline(geometry: HungGeometry, place: Place, right: number, down: number): PathStep[] {
  const { widthMm, pitchMm, dowel, cordEndsMm, headsX } = geometry;
  const top = place.y(dowel.y + dowel.diameter) + down;
  const legs = place.y(legsY(geometry)) + down;
  const rowOne = place.y(0) + down;
  const [first, last] = [cordEndsMm[0] ?? 0, cordEndsMm.at(-1) ?? 0];
  return [
    ['M', place.x(headsX[0]) + right, top],
    ['L', place.x(headsX[0]) + right, legs],
    ['L', place.x(0) + right, rowOne],
    ['L', place.x(0) + right, place.y(first) + down],
    ...cordEndsMm.map(
      (end, column): PathStep => ['L', place.x((column + 0.5) * pitchMm) + right, place.y(end) + down],
    ),
    ['L', place.x(widthMm) + right, place.y(last) + down],
    ['L', place.x(widthMm) + right, rowOne],
    ['L', place.x(headsX[1]) + right, legs],
    ['L', place.x(headsX[1]) + right, top],
    ['Z'],
  ];
}
