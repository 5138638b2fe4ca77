/**
 * How the materials look: an outline, a body, and the twist of the plies across it, which is also what tells two yarns
 * apart where a printer has only black: pale ticks on a dark yarn, dark ones on a pale yarn, long ones on a cord.
 */

import { COTTON } from '../../chart/hanging/cotton.ts';
import type { PathItem, PathStep } from '../page/page.ts';
import { inks } from '../page/style.ts';
import { darker, lighter } from '../page/tones.ts';
import { type Along, type Bend, directionAt, type Point, pointAt } from './curve.ts';
import type { Material } from './strand.ts';

interface Look {
  readonly edge: string;
  readonly edgeMm: number;
  readonly body: string;
  /** The plies: ticks of this colour, this far apart, and leaning along the strand by this much, in mm. */
  readonly twist?: {
    readonly color: string;
    readonly mm: number;
    readonly apart: number;
    readonly lean: number;
  };
}

const wood = '#c08a52';

export const looks: Readonly<Record<Material, Look>> = {
  cord: {
    edge: darker(COTTON, 0.75),
    edgeMm: 0.25,
    body: lighter(COTTON, 0.5),
    twist: { color: darker(COTTON, 0.45), mm: 0.2, apart: 2.2, lean: 1.9 },
  },
  yarn: {
    edge: darker(inks.accent, 0.5),
    edgeMm: 0.2,
    body: darker(inks.accent, 0.12),
    twist: { color: lighter(inks.accent, 0.62), mm: 0.2, apart: 1.5, lean: 1 },
  },
  'other-yarn': {
    edge: '#26333b',
    edgeMm: 0.25,
    body: '#dfeaf0',
    twist: { color: '#2f4650', mm: 0.24, apart: 1.3, lean: 0.8 },
  },
  wood: { edge: darker(wood, 0.55), edgeMm: 0.25, body: lighter(wood, 0.25) },
};

/** Where length is measured along a bend, in parts of it. */
const STEPS = 24;

/** A part of a curve. */
interface Stretch {
  readonly curve: readonly Bend[];
  readonly from: Along;
  readonly to: Along;
}

/** The plies seen on stretches of a material, as one path. They go on from stretch to stretch of a strand. */
export function twistMarks(material: Material, stretches: readonly Stretch[], diameter: number): PathItem {
  const { twist, edgeMm } = looks[material];
  const half = diameter / 2 - edgeMm;
  const steps = twist
    ? stretches.flatMap(({ curve, from, to }) =>
        everyMm(curve, twist.apart)
          .filter((along) => along >= from && along < to)
          .flatMap((along) => tick(pointAt(curve, along), directionAt(curve, along), half, twist.lean)),
      )
    : [];
  return { kind: 'path', steps, ...(twist && { stroke: twist.color, strokeMm: twist.mm }) };
}

/** Across the strand from edge to edge. */
function tick(at: Point, way: Point, half: number, lean: number): PathStep[] {
  const place = (along: number, across: number): [number, number] => [
    at.x + way.x * along - way.y * across,
    at.y + way.y * along + way.x * across,
  ];
  return [
    ['M', ...place(-lean / 2, -half)],
    ['L', ...place(lean / 2, half)],
  ];
}

/** Places a given length apart, and half of that at least from both ends, so that no tick sticks out. */
function everyMm(curve: readonly Bend[], apart: number): Along[] {
  const places: Along[] = [];
  let left = apart / 2;
  let last = pointAt(curve, 0);
  for (let i = 1; i <= curve.length * STEPS; i++) {
    const here = pointAt(curve, i / STEPS);
    const length = Math.hypot(here.x - last.x, here.y - last.y);
    let used = 0;
    while (length - used >= left) {
      used += left;
      places.push((i - 1 + used / length) / STEPS);
      left = apart;
    }
    left -= length - used;
    last = here;
  }
  // What is left to the next tick tells how far the last one is from the end.
  if (left > apart / 2) places.pop();
  return places;
}
