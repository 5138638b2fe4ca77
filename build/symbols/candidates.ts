/**
 * Drawings from which the alphabet is chosen: one to three strokes, dots or filled shapes on the lattice, copied by a
 * symmetry, kept only where they are clean enough to print small. Seeded: the same list each time.
 */
import type { Drawing } from './raster.ts';

type Point = readonly [number, number];
type Segment = readonly [number, number, number, number];

export interface Candidate extends Drawing {
  /** Straight lines and points that the eye has to take in; filled shapes count double. */
  readonly parts: number;
}

/** Seeded numbers from 0 up to 1 (mulberry32, a public-domain generator). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Move = (p: Point) => Point;

const last = 4;
const same: Move = (p) => p;
const leftRight: Move = ([x, y]) => [last - x, y];
const upDown: Move = ([x, y]) => [x, last - y];
const diagonal: Move = ([x, y]) => [y, x];
const halfTurn: Move = ([x, y]) => [last - x, last - y];
const quarterTurn: Move = ([x, y]) => [last - y, x];
const backTurn: Move = ([x, y]) => [y, last - x];
const antiDiagonal: Move = ([x, y]) => [last - y, last - x];

/**
 * How a drawing is copied onto itself, and how often that is tried: mirrors left to right look calmest. Quarter turns
 * without mirrors are left out on purpose: they give hooked crosses.
 */
const symmetries: readonly { moves: readonly Move[]; weight: number }[] = [
  { moves: [same, leftRight], weight: 8 },
  { moves: [same, upDown], weight: 5 },
  { moves: [same, diagonal], weight: 3 },
  { moves: [same, antiDiagonal], weight: 3 },
  { moves: [same, halfTurn], weight: 6 },
  { moves: [same, leftRight, upDown, halfTurn], weight: 7 },
  { moves: [same, diagonal, antiDiagonal, halfTurn], weight: 5 },
  {
    moves: [same, leftRight, upDown, halfTurn, diagonal, antiDiagonal, quarterTurn, backTurn],
    weight: 5,
  },
];

export function candidates(seed: number, tries: number): Candidate[] {
  const random = seeded(seed);
  const found = new Map<string, Candidate>();
  for (let i = 0; i < tries; i++) {
    const drawing = draw(random);
    if (drawing && isClean(drawing)) found.set(keyOf(drawing), drawing);
  }
  return [...found.values()];
}

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

function draw(random: () => number): Candidate | undefined {
  const { moves } = weighted(symmetries, random);
  const segments: Segment[] = [];
  const dots: Point[] = [];
  const fills: Point[][] = [];
  const elements = 1 + Math.floor(random() * 3);
  for (let i = 0; i < elements; i++) {
    const kind = random();
    if (kind < 0.72) {
      const stroke = randomStroke(random);
      if (!stroke) return undefined;
      for (const move of moves) {
        const [x1, y1] = move([stroke[0], stroke[1]]);
        const [x2, y2] = move([stroke[2], stroke[3]]);
        segments.push([x1, y1, x2, y2]);
      }
    } else if (kind < 0.86) {
      const point: Point = [Math.floor(random() * 5), Math.floor(random() * 5)];
      for (const move of moves) dots.push(move(point));
    } else {
      const fill = randomFill(random);
      for (const move of moves) fills.push(fill.map(move));
    }
  }
  return tidy(segments, dots, fills);
}

function weighted<T extends { weight: number }>(list: readonly T[], random: () => number): T {
  let at = random() * list.reduce((sum, each) => sum + each.weight, 0);
  for (const each of list) {
    at -= each.weight;
    if (at < 0) return each;
  }
  return list[list.length - 1]!;
}

/** Level, upright, diagonal, or twice as steep one way as the other; nothing shorter than two steps stands alone. */
const slopes: readonly { step: Point; weight: number }[] = [
  { step: [1, 0], weight: 5 },
  { step: [0, 1], weight: 5 },
  { step: [1, 1], weight: 5 },
  { step: [1, -1], weight: 5 },
  { step: [1, 2], weight: 1 },
  { step: [2, 1], weight: 1 },
  { step: [1, -2], weight: 1 },
  { step: [2, -1], weight: 1 },
];

function randomStroke(random: () => number): Segment | undefined {
  const x = Math.floor(random() * 5);
  const y = Math.floor(random() * 5);
  const [dx, dy] = weighted(slopes, random).step;
  const steps = 1 + Math.floor(random() * 4);
  const toX = x + dx * steps;
  const toY = y + dy * steps;
  return toX > last || toY < 0 || toY > last ? undefined : [x, y, toX, toY];
}

/** Squares, diamonds and half squares of two or more steps, as corners around a random place. */
const solids: readonly (readonly Point[])[] = [
  [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ],
  [
    [1, 0],
    [2, 1],
    [1, 2],
    [0, 1],
  ],
  [
    [2, 0],
    [4, 2],
    [2, 4],
    [0, 2],
  ],
  [
    [0, 0],
    [2, 0],
    [0, 2],
  ],
  [
    [0, 0],
    [4, 0],
    [2, 2],
  ],
  [
    [0, 0],
    [2, 2],
    [0, 4],
  ],
  [
    [0, 0],
    [4, 0],
    [0, 4],
  ],
  [
    [0, 0],
    [4, 0],
    [4, 1],
    [0, 1],
  ],
  [
    [0, 0],
    [1, 0],
    [1, 4],
    [0, 4],
  ],
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
  [
    [0, 0],
    [4, 0],
    [4, 2],
    [0, 2],
  ],
  [
    [0, 0],
    [2, 0],
    [2, 4],
    [0, 4],
  ],
];

function randomFill(random: () => number): Point[] {
  const solid = solids[Math.floor(random() * solids.length)]!;
  const width = Math.max(...solid.map(([x]) => x));
  const height = Math.max(...solid.map(([, y]) => y));
  const atX = Math.floor(random() * (5 - width));
  const atY = Math.floor(random() * (5 - height));
  return solid.map(([x, y]) => [x + atX, y + atY]);
}

/** One entry for what is drawn twice; strokes on one line that touch become one. Undefined where nothing is left. */
function tidy(segments: Segment[], dots: Point[], fills: Point[][]): Candidate | undefined {
  const strokes = joinLines(segments);
  const points = unique(dots, ([x, y]) => `${x} ${y}`);
  const solid = unique(fills, (fill) => fill.map(String).sort().join(' '));
  if (strokes.length + points.length + solid.length === 0) return undefined;
  return {
    strokes,
    dots: points.map((point) => [...point]),
    fills: solid.map((fill) => fill.flat()),
    parts: strokes.length + points.length + 2 * solid.length,
  };
}

function unique<T>(list: readonly T[], key: (each: T) => string): T[] {
  return [...new Map(list.map((each) => [key(each), each])).values()];
}

/** Strokes as sets of unit steps, so that overlapping ones on one line merge; then as the longest lines again. */
function joinLines(segments: readonly Segment[]): number[][] {
  const units = new Map<string, { x: number; y: number; dx: number; dy: number }>();
  for (const segment of segments) {
    const [x1, y1, x2, y2] = forward(segment);
    const steps = greatestStep(x2 - x1, y2 - y1);
    const dx = (x2 - x1) / steps;
    const dy = (y2 - y1) / steps;
    for (let i = 0; i < steps; i++) {
      const unit = { x: x1 + dx * i, y: y1 + dy * i, dx, dy };
      units.set(unitKey(unit), unit);
    }
  }
  const lines: number[][] = [];
  for (const unit of [...units.values()].sort(
    (a, b) => a.x - b.x || a.y - b.y || a.dx - b.dx || a.dy - b.dy,
  )) {
    const { x, y, dx, dy } = unit;
    if (units.has(unitKey({ x: x - dx, y: y - dy, dx, dy }))) continue;
    let steps = 1;
    while (units.has(unitKey({ x: x + dx * steps, y: y + dy * steps, dx, dy }))) steps++;
    lines.push([x, y, x + dx * steps, y + dy * steps]);
  }
  return lines;
}

function unitKey({ x, y, dx, dy }: { x: number; y: number; dx: number; dy: number }): string {
  return `${x} ${y} ${dx} ${dy}`;
}

function forward([x1, y1, x2, y2]: Segment): Segment {
  return x2 > x1 || (x2 === x1 && y2 > y1) ? [x1, y1, x2, y2] : [x2, y2, x1, y1];
}

/** The greatest common divisor of two lengths of which at most one is zero. */
function greatestStep(a: number, b: number): number {
  return b === 0 ? Math.abs(a) : greatestStep(b, a % b);
}

function keyOf({ strokes, dots, fills }: Drawing): string {
  return JSON.stringify([
    strokes.map(String).sort(),
    dots.map(String).sort(),
    fills.map((fill) => String(fill)).sort(),
  ]);
}

/** Steps of the lattice between what does not touch: less would close up in print. */
const CLEAR_STEPS = 1.4;
/** Strokes meet at 45 degrees or more: sharper ones run together. */
const SHARPEST = Math.cos(Math.PI / 4) + 1e-9;

function isClean(drawing: Candidate): boolean {
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
  if (cross(a, b)) return 0;
  return Math.min(
    pointToLine(a[0], a[1], b),
    pointToLine(a[2], a[3], b),
    pointToLine(b[0], b[1], a),
    pointToLine(b[2], b[3], a),
  );
}

function cross(a: Segment, b: Segment): boolean {
  const side = (s: Segment, x: number, y: number) => (s[2] - s[0]) * (y - s[1]) - (s[3] - s[1]) * (x - s[0]);
  return side(a, b[0], b[1]) * side(a, b[2], b[3]) < 0 && side(b, a[0], a[1]) * side(b, a[2], a[3]) < 0;
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
