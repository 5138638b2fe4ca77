/** Which drawings are clean enough to print small: gaps that stay open, fair angles, dots that stand free. */
import type { Candidate } from './candidates.ts';
import { crosses, type Point, type Segment } from './lines.ts';
import { last } from './moves.ts';
import type { Drawing } from './raster.ts';

/** Steps of the lattice between what does not touch: less would close up in print. */
const CLEAR_STEPS = 1.4;
/** Strokes meet at 45 degrees or more: sharper ones run together. */
const SHARPEST = Math.cos(Math.PI / 4) + 1e-9;

export function isClean(drawing: Candidate): boolean {
  const edges = drawing.fills.flatMap((fill) => edgesOf(fill));
  const lines = [...(drawing.strokes as Segment[]), ...edges];
  if (drawing.parts > 8 || drawing.fills.length > 4 || drawing.dots.length > 5) return false;
  if (!isCentred(drawing)) return false;
  if (drawing.strokes.some((line) => Math.hypot(line[2]! - line[0]!, line[3]! - line[1]!) < 1.4))
    return false;
  for (let i = 0; i < lines.length; i++) {
    for (let j = i + 1; j < lines.length; j++) {
      if (!clearOrMeeting(lines[i]!, lines[j]!)) return false;
    }
  }
  return dotsStandFree(drawing.dots as unknown as Point[], lines, drawing.fills);
}

function edgesOf(fill: readonly number[]): Segment[] {
  const edges: Segment[] = [];
  for (let i = 0; i < fill.length; i += 2) {
    const j = (i + 2) % fill.length;
    edges.push([fill[i]!, fill[i + 1]!, fill[j]!, fill[j + 1]!]);
  }
  return edges;
}

/** Most of the cell is used in at least one direction, and the drawing sits in the middle of it. */
function isCentred({ strokes, dots, fills }: Drawing): boolean {
  const numbers = [...strokes, ...dots, ...fills].flat();
  const xs = numbers.filter((_, i) => i % 2 === 0);
  const ys = numbers.filter((_, i) => i % 2 === 1);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const isDot = strokes.length + fills.length === 0 && dots.length === 1;
  return (
    left + right === last && top + bottom === last && (isDot || Math.max(right - left, bottom - top) >= 3)
  );
}

/** Two lines either keep their distance, or share an end, a crossing, or a foot on the other at a fair angle. */
function clearOrMeeting(a: Segment, b: Segment): boolean {
  if (distance(a, b) >= CLEAR_STEPS) return true;
  if (!meet(a, b)) return false;
  if (hasStub(a, b) || hasStub(b, a)) return false;
  const [ax, ay, bx, by] = [a[2] - a[0], a[3] - a[1], b[2] - b[0], b[3] - b[1]];
  const cosine = Math.abs(ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
  if (cosine <= SHARPEST) return true;
  // A bend so flat that the two point away from one another is no sharp corner.
  const shared = [
    [a[0], a[1]],
    [a[2], a[3]],
  ].find(([x, y]) => endsAt(b, x!, y!));
  if (!shared) return false;
  const [x, y] = shared as [number, number];
  const outA = a[0] === x && a[1] === y ? [ax, ay] : [-ax, -ay];
  const outB = b[0] === x && b[1] === y ? [bx, by] : [-bx, -by];
  return outA[0]! * outB[0]! + outA[1]! * outB[1]! < 0;
}

/** An end of `a` that sticks out just past `b`, or stops just beside it. */
function hasStub(a: Segment, b: Segment): boolean {
  return [pointToLine(a[0], a[1], b), pointToLine(a[2], a[3], b)].some((far) => far > 1e-9 && far < 0.99);
}

function endsAt(s: Segment, x: number, y: number): boolean {
  return (s[0] === x && s[1] === y) || (s[2] === x && s[3] === y);
}

function meet(a: Segment, b: Segment): boolean {
  return distance(a, b) < 1e-9;
}

function distance(a: Segment, b: Segment): number {
  if (crosses(a, b)) return 0;
  return Math.min(
    pointToLine(a[0], a[1], b),
    pointToLine(a[2], a[3], b),
    pointToLine(b[0], b[1], a),
    pointToLine(b[2], b[3], a),
  );
}

function pointToLine(x: number, y: number, [x1, y1, x2, y2]: Segment): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const along = Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - x1 - along * dx, y - y1 - along * dy);
}

function dotsStandFree(
  dots: readonly Point[],
  lines: readonly Segment[],
  fills: readonly (readonly number[])[],
): boolean {
  for (const [i, [x, y]] of dots.entries()) {
    if (lines.some((line) => pointToLine(x, y, line) < CLEAR_STEPS)) return false;
    if (dots.some(([ox, oy], j) => j < i && Math.hypot(x - ox, y - oy) < 1.9)) return false;
    if (fills.some((fill) => isWithin(fill, x, y))) return false;
  }
  return true;
}

function isWithin(fill: readonly number[], x: number, y: number): boolean {
  const xs = fill.filter((_, i) => i % 2 === 0);
  const ys = fill.filter((_, i) => i % 2 === 1);
  return x >= Math.min(...xs) && x <= Math.max(...xs) && y >= Math.min(...ys) && y <= Math.max(...ys);
}
