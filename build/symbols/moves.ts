/** The eight ways in which the lattice falls on itself. */
import type { Point } from './lines.ts';
import type { Drawing } from './raster.ts';

/** A symmetry of the lattice. */
export type Move = (p: Point) => Point;

/** The lattice's last line of points, counted from 0. */
export const last = 4;
export const same: Move = (p) => p;
export const leftRight: Move = ([x, y]) => [last - x, y];
export const upDown: Move = ([x, y]) => [x, last - y];
export const diagonal: Move = ([x, y]) => [y, x];
export const halfTurn: Move = ([x, y]) => [last - x, last - y];
export const quarterTurn: Move = ([x, y]) => [last - y, x];
export const backTurn: Move = ([x, y]) => [y, last - x];
export const antiDiagonal: Move = ([x, y]) => [last - y, last - x];

/** The eight ways to turn and mirror a drawing; the first leaves it as it is. */
export function twins(drawing: Drawing): Drawing[] {
  const all = [same, leftRight, upDown, halfTurn, diagonal, antiDiagonal, quarterTurn, backTurn];
  const moved = (points: readonly number[], move: Move) => {
    const out: number[] = [];
    for (let i = 0; i < points.length; i += 2) out.push(...move([points[i]!, points[i + 1]!]));
    return out;
  };
  return all.map((move) => ({
    strokes: drawing.strokes.map((stroke) => moved(stroke, move)),
    dots: drawing.dots.map((dot) => moved(dot, move)),
    fills: drawing.fills.map((fill) => moved(fill, move)),
  }));
}
