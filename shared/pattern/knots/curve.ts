/**
 * A strand's line as cubic curves through its waypoints. At each waypoint the line runs as the chord between its two
 * neighbours does, so that it never overshoots a narrow turn; heights change evenly from waypoint to waypoint.
 */
import type { PathStep } from '../page/page.ts';
import type { Waypoint } from './strand.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** From one waypoint to the next: four control points, and the heights at both ends. */
export interface Bend {
  readonly points: readonly [Point, Point, Point, Point];
  readonly heights: readonly [number, number];
}

/** Where on a curve: whole numbers are the waypoints, counted from 0. */
export type Along = number;

/** How far handles reach, as a share of the chord; a quarter circle takes 0.39. */
const HANDLE = 0.38;

export function curveThrough(waypoints: readonly Waypoint[]): Bend[] {
  const directions = waypoints.map((_, i) => {
    const [ax, ay] = waypoints[Math.max(i - 1, 0)]!;
    const [bx, by] = waypoints[Math.min(i + 1, waypoints.length - 1)]!;
    const length = Math.hypot(bx - ax, by - ay);
    return { x: (bx - ax) / length, y: (by - ay) / length };
  });
  return waypoints.slice(1).map(([x, y, height], i): Bend => {
    const [fromX, fromY, fromHeight] = waypoints[i]!;
    const reach = Math.hypot(x - fromX, y - fromY) * HANDLE;
    const out = directions[i]!;
    const into = directions[i + 1]!;
    return {
      points: [
        { x: fromX, y: fromY },
        { x: fromX + out.x * reach, y: fromY + out.y * reach },
        { x: x - into.x * reach, y: y - into.y * reach },
        { x, y },
      ],
      heights: [fromHeight, height],
    };
  });
}

export function pointAt(curve: readonly Bend[], along: Along): Point & { height: number } {
  const { bend, t } = bendAt(curve, along);
  const [a, b, c, d] = bend.points;
  const s = 1 - t;
  const [p, q, r, u] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return {
    x: p * a.x + q * b.x + r * c.x + u * d.x,
    y: p * a.y + q * b.y + r * c.y + u * d.y,
    height: bend.heights[0] * s + bend.heights[1] * t,
  };
}

/** Which way the line runs there, as a vector of length 1. */
export function directionAt(curve: readonly Bend[], along: Along): Point {
  const { x, y } = speedAt(curve, along);
  const length = Math.hypot(x, y);
  return { x: x / length, y: y / length };
}

/** Steps to a bend in which lengths are measured: an even speed is no use, for a line nearly stands where it turns back. */
const MEASURES = 256;

/** The place a short length further along the line, or back where `mm` is negative; at most the line's end. */
export function placeAfterMm(curve: readonly Bend[], along: Along, mm: number): Along {
  const step = Math.sign(mm) / MEASURES;
  let left = Math.abs(mm);
  let at = along;
  while (left > 0) {
    const next = Math.min(Math.max(at + step, 0), curve.length);
    if (next === at) return at;
    const [from, to] = [pointAt(curve, at), pointAt(curve, next)];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length >= left) return at + (next - at) * (left / length);
    left -= length;
    at = next;
  }
  return at;
}

/** In mm to a whole bend. */
function speedAt(curve: readonly Bend[], along: Along): Point {
  const { bend, t } = bendAt(curve, along);
  const [a, b, c, d] = bend.points;
  const s = 1 - t;
  const [p, q, r] = [3 * s * s, 6 * s * t, 3 * t * t];
  return {
    x: p * (b.x - a.x) + q * (c.x - b.x) + r * (d.x - c.x),
    y: p * (b.y - a.y) + q * (c.y - b.y) + r * (d.y - c.y),
  };
}

function bendAt(curve: readonly Bend[], along: Along): { bend: Bend; t: number } {
  const i = Math.min(Math.max(Math.floor(along), 0), curve.length - 1);
  return { bend: curve[i]!, t: along - i };
}

/** The stretch between two places as a path, its exact part of the curve. */
export function pathBetween(curve: readonly Bend[], from: Along, to: Along): PathStep[] {
  const start = pointAt(curve, from);
  const steps: PathStep[] = [['M', start.x, start.y]];
  for (let i = Math.min(Math.floor(from), curve.length - 1); i < to; i++) {
    const part = cut(curve[i]!.points, Math.max(from - i, 0), Math.min(to - i, 1));
    steps.push(['C', part[1].x, part[1].y, part[2].x, part[2].y, part[3].x, part[3].y]);
  }
  return steps;
}

/** The part of a cubic between two of its parameters, after de Casteljau. */
function cut(points: Bend['points'], from: number, to: number): Bend['points'] {
  const [, , , end] = points;
  const upTo = to === 1 ? points : split(points, to)[0];
  if (from === 0) return upTo;
  const rest = split(upTo, from / to)[1];
  return to === 1 ? [rest[0], rest[1], rest[2], end] : rest;
}

function split([a, b, c, d]: Bend['points'], t: number): [Bend['points'], Bend['points']] {
  const ab = between(a, b, t);
  const bc = between(b, c, t);
  const cd = between(c, d, t);
  const abc = between(ab, bc, t);
  const bcd = between(bc, cd, t);
  const middle = between(abc, bcd, t);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}

function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** Places along the curve, `count` to each bend, its ends included. */
export function placesAlong(curve: readonly Bend[], count: number): Along[] {
  return Array.from({ length: curve.length * count + 1 }, (_, i) => i / count);
}
