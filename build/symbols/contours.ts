/**
 * The parts of a symbol as closed outlines in a unit square: the cell, with 0, 0 its top left corner and 1, 1 its
 * bottom right one. The lattice leaves a margin all around, so that neighbouring symbols never touch. Every stroke,
 * dot and filled shape is a contour of its own, all wound the same way; `solid-outline.ts` unites them.
 */
import type { PathStep } from '../../shared/pattern/page/page.ts';
import type { Drawing } from './raster.ts';

/** All in shares of the cell's side. */
export const symbolGeometry = {
  points: 5,
  /** From the cell's edge to the first line of points. */
  firstAt: 0.16,
  pitch: 0.17,
  /** A quarter of a millimetre in a cell of 2.5 mm, well above the thinnest rule. */
  strokeWidth: 0.1,
  dotRadius: 0.095,
} as const;

/** Where a lattice coordinate lies in the unit square. */
export function latticeAt(point: number): number {
  return symbolGeometry.firstAt + point * symbolGeometry.pitch;
}

/** Control arm of a cubic that draws a quarter of a unit circle; off by at most 0.03 % of the radius. */
const QUARTER = 0.5522847498;

export function partContours(shape: Drawing): PathStep[] {
  const half = symbolGeometry.strokeWidth / 2;
  return [
    ...shape.fills.flatMap((fill) => [...polygon(fill), ...strokes([...fill, fill[0]!, fill[1]!], half)]),
    ...shape.strokes.flatMap((stroke) => strokes(stroke, half)),
    ...shape.dots.flatMap(([x, y]) => capsule(x!, y!, x!, y!, symbolGeometry.dotRadius)),
  ];
}

function strokes(points: readonly number[], radius: number): PathStep[] {
  const steps: PathStep[] = [];
  for (let i = 0; i + 3 < points.length; i += 2) {
    steps.push(...capsule(points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!, radius));
  }
  return steps;
}

/** A segment with round ends, clockwise as seen; a dot where both ends are one point. */
function capsule(fromX: number, fromY: number, toX: number, toY: number, radius: number): PathStep[] {
  const length = Math.hypot(toX - fromX, toY - fromY);
  // Along the segment, and across it to the side that is on the left when looking along.
  const ux = length === 0 ? radius : ((toX - fromX) / length) * radius;
  const uy = length === 0 ? 0 : ((toY - fromY) / length) * radius;
  const vx = uy;
  const vy = -ux;
  const [x1, y1, x2, y2] = [latticeAt(fromX), latticeAt(fromY), latticeAt(toX), latticeAt(toY)];
  return [
    ['M', x1 + vx, y1 + vy],
    ['L', x2 + vx, y2 + vy],
    quarter(x2, y2, vx, vy, ux, uy),
    quarter(x2, y2, ux, uy, -vx, -vy),
    ['L', x1 - vx, y1 - vy],
    quarter(x1, y1, -vx, -vy, -ux, -uy),
    quarter(x1, y1, -ux, -uy, vx, vy),
    ['Z'],
  ];
}

/** A quarter turn around x, y from the arm a to the arm b. */
function quarter(x: number, y: number, ax: number, ay: number, bx: number, by: number): PathStep {
  return [
    'C',
    x + ax + bx * QUARTER,
    y + ay + by * QUARTER,
    x + bx + ax * QUARTER,
    y + by + ay * QUARTER,
    x + bx,
    y + by,
  ];
}

/** A polygon through lattice points, turned clockwise if it was not. */
function polygon(points: readonly number[]): PathStep[] {
  const corners: [number, number][] = [];
  for (let i = 0; i < points.length; i += 2) corners.push([points[i]!, points[i + 1]!]);
  if (turn(corners) < 0) corners.reverse();
  return [...corners.map(([x, y], i): PathStep => [i === 0 ? 'M' : 'L', latticeAt(x), latticeAt(y)]), ['Z']];
}

/** Twice the signed area: positive where the corners go clockwise as seen, with y down. */
function turn(corners: readonly [number, number][]): number {
  return corners.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
}
