/**
 * Drawings from which the alphabet is chosen: one to three strokes, dots or filled shapes on the lattice, copied by a
 * symmetry, kept only where they are clean enough to print small. Seeded: the same list each time.
 */
import { isClean } from './clean.ts';
import { joinLines } from './join-lines.ts';
import type { Point, Segment } from './lines.ts';
import {
  antiDiagonal,
  backTurn,
  diagonal,
  halfTurn,
  last,
  leftRight,
  type Move,
  quarterTurn,
  same,
  upDown,
} from './moves.ts';
import type { Drawing } from './raster.ts';

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

function keyOf({ strokes, dots, fills }: Drawing): string {
  return JSON.stringify([
    strokes.map(String).sort(),
    dots.map(String).sort(),
    fills.map((fill) => String(fill)).sort(),
  ]);
}
