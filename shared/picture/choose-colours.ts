/**
 * A few colours that stand for many: k-means in OKLab, every colour weighing as many cells as have it. There is no
 * chance in it. It begins with the commonest colour, and adds again and again the one that all so far serve worst;
 * then colours and the cells nearest to them are settled in turn.
 */

import { type CellColours, hexOfSteps, type Steps } from './cell-colours.ts';
import { type ColourPoint, colourTally } from './colour-tally.ts';

/** Rounds after which shades no longer move by anything that is seen. */
const MOST_ROUNDS = 40;

/**
 * At most `count` colours, as `#rrggbb`, no two the same; all colours of the cells where they have no more than that.
 */
export function chooseColours(cells: CellColours, count: number): string[] {
  const points = colourTally(cells);
  const colours = points.length <= count ? points : settled(points, spreadOut(points, count));
  return [...new Set(colours.map(hexOfSteps))];
}

/** The start: the commonest point, then each time the one with the most cells times squared distance to the nearest. */
function spreadOut(points: readonly ColourPoint[], count: number): Steps[] {
  const distances = new Float64Array(points.length).fill(1);
  const chosen: Steps[] = [];
  while (chosen.length < count) {
    const next = points[worst(points, distances)]!;
    points.forEach((point, i) => {
      const distance = squared(point, next);
      if (chosen.length === 0 || distance < distances[i]!) distances[i] = distance;
    });
    chosen.push({ l: next.l, a: next.a, b: next.b });
  }
  return chosen;
}

function settled(points: readonly ColourPoint[], start: readonly Steps[]): Steps[] {
  const nearest = new Int32Array(points.length).fill(-1);
  const distances = new Float64Array(points.length);
  let centres = start;
  for (let round = 0; round < MOST_ROUNDS && assign(points, centres, nearest, distances); round++) {
    centres = means(points, nearest, distances, centres.length);
  }
  assign(points, centres, nearest, distances);
  return flattened(points, nearest, centres);
}

/** Gives each point its nearest centre, the first of equals; false where nothing changed. */
function assign(
  points: readonly ColourPoint[],
  centres: readonly Steps[],
  nearest: Int32Array,
  distances: Float64Array,
): boolean {
  // This loop is where the time goes: over plain numbers it runs many times as fast as over objects.
  const places = Float64Array.from(centres.flatMap(({ l, a, b }) => [l, a, b]));
  let changed = false;
  for (let i = 0; i < points.length; i++) {
    const { l, a, b } = points[i]!;
    let least = Number.POSITIVE_INFINITY;
    let index = 0;
    for (let k = 0; k < centres.length; k++) {
      const dl = l - places[3 * k]!;
      const da = a - places[3 * k + 1]!;
      const db = b - places[3 * k + 2]!;
      const distance = dl * dl + da * da + db * db;
      if (distance < least) {
        least = distance;
        index = k;
      }
    }
    distances[i] = least;
    changed ||= nearest[i] !== index;
    nearest[i] = index;
  }
  return changed;
}

/** The mean of each centre's points. A centre that lost all of its points moves to the one that is served worst. */
function means(
  points: readonly ColourPoint[],
  nearest: Int32Array,
  distances: Float64Array,
  count: number,
): Steps[] {
  const sums = Array.from({ length: count }, () => ({ cells: 0, l: 0, a: 0, b: 0 }));
  points.forEach(({ cells, l, a, b }, i) => {
    const sum = sums[nearest[i]!]!;
    sum.cells += cells;
    sum.l += cells * l;
    sum.a += cells * a;
    sum.b += cells * b;
  });
  return sums.map(({ cells, l, a, b }) => {
    if (cells > 0) return { l: l / cells, a: a / cells, b: b / cells };
    const at = worst(points, distances);
    distances[at] = 0;
    return points[at]!;
  });
}

/**
 * Where more than half of a centre's cells have one colour, that colour itself: the cells along the edges of a flat
 * drawing are mixtures, and would pull each of its colours a little off.
 */
function flattened(points: readonly ColourPoint[], nearest: Int32Array, centres: readonly Steps[]): Steps[] {
  const totals = new Float64Array(centres.length);
  const commonest = new Int32Array(centres.length).fill(-1);
  points.forEach(({ cells }, i) => {
    const k = nearest[i]!;
    totals[k] = totals[k]! + cells;
    if (commonest[k]! < 0 || cells > points[commonest[k]!]!.cells) commonest[k] = i;
  });
  return centres.map((centre, k) => {
    const point = points[commonest[k]!];
    return point && point.cells * 2 > totals[k]! ? point : centre;
  });
}

/** The first point with the most cells times squared distance. */
function worst(points: readonly ColourPoint[], distances: Float64Array): number {
  let most = -1;
  let at = 0;
  for (let i = 0; i < points.length; i++) {
    const weight = points[i]!.cells * distances[i]!;
    if (weight > most) {
      most = weight;
      at = i;
    }
  }
  return at;
}

function squared(a: Steps, b: Steps): number {
  return (a.l - b.l) ** 2 + (a.a - b.a) ** 2 + (a.b - b.b) ** 2;
}
