/**
 * Chooses the 64 symbols of the alphabet and writes `shared/yarn/symbols.generated.json`.
 *
 * Run it with `npx tsx build/symbols/choose.ts`. A new choice changes how every printed pattern looks, so it is run
 * only on purpose, never as a part of a build.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isAvoided } from './avoid.ts';
import { isCalm, symmetryOf, unrestOf } from './calm.ts';
import { type Candidate, candidates } from './candidates.ts';
import { hasOpenCounters } from './counters.ts';
import { differencePx, type Print, print } from './difference.ts';
import { letterJudge } from './letters.ts';
import { twins } from './moves.ts';
import { cellPx, type Drawing, oneBit } from './raster.ts';
import { solidOutline } from './solid-outline.ts';

/** In the order in which yarns get them: a chart of few yarns reads a a b c. */
const TEXTS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&';
const SEED = 7;
const TRIES = 600_000;
/** Nearer than this to a letter of the sans face, a drawing is read as that letter. */
const LETTER_SHARE = 0.31;
/** The set is polished at these sizes, so that a design of few yarns has the most different ones. */
const BLOCKS = [6, 12, 24, 40, 64];
/** Up to here no symbol is another one turned or mirrored, for charts that are held upside down. */
const NO_TWINS = 24;
/** What a turned or mirrored twin is granted beyond that, in the unit of `apart`. */
const TWIN_GRACE = 2.2;
/** No more than one in so many of each kind; the rest are strokes. */
const portions: readonly { is: (drawing: Drawing) => boolean; oneIn: number }[] = [
  { is: ({ fills }) => fills.length > 0, oneIn: 4 },
  { is: ({ dots }) => dots.length > 0, oneIn: 2.5 },
  { is: ({ strokes, fills }) => strokes.length + fills.length === 0, oneIn: 6 },
];
/** Share of the cell that a symbol may cover, since more would hide the yarn's colour: among the first 12, and later. */
const mostInk = (place: number) => (place < 12 ? 0.22 : 0.33);
/** Within this share of the best difference the simplest drawing is taken. */
const AMONG_EQUALS = 0.86;
const shifts = { freePx: 1, maxPx: 3, pricePerPx: 2 };

interface Pooled {
  readonly drawing: Candidate;
  readonly print: Print;
  /** Lower is calmer. */
  readonly unrest: number;
}

/** Between a chosen symbol and all of the pool: as it stands, and as the nearest of its turned or mirrored twins. */
interface Distances {
  readonly standing: Float64Array;
  readonly turned: Float64Array;
}

const nodeModules = fileURLToPath(new URL('../../node_modules', import.meta.url));
const target = fileURLToPath(new URL('../../shared/yarn/symbols.generated.json', import.meta.url));

const pool = makePool();
const known = new Map<number, Distances>();
const chosen = choose();
writeFileSync(target, toJson(chosen.map((index) => pool[index]!.drawing)));
console.log(`${pool.length} clean drawings, 64 chosen`);
for (const size of BLOCKS)
  console.log(`first ${size}: nearest pair ${nearestPair(chosen.slice(0, size)).toFixed(2)}`);

function makePool(): Pooled[] {
  const judge = letterJudge(nodeModules);
  const seen = new Set<string>();
  const list: Pooled[] = [];
  for (const drawing of candidates(SEED, TRIES)) {
    if (!isCalm(drawing) || isAvoided(drawing, symmetryOf(drawing))) continue;
    const looks = oneBit(drawing, cellPx(300)).ink.join('');
    if (seen.has(looks)) continue;
    seen.add(looks);
    if (!hasOpenCounters(drawing)) continue;
    if (drawing.fills.length === 0 && judge(drawing).share < LETTER_SHARE) continue;
    const seenSmall = print(oneBit(drawing, cellPx(150)));
    list.push({ drawing, print: seenSmall, unrest: unrestOf(drawing) });
  }
  return list;
}

function choose(): number[] {
  const dot = pool.findIndex(
    ({ drawing: { strokes, dots, fills } }) =>
      strokes.length + fills.length === 0 && dots.length === 1 && dots[0]!.every((at) => at === 2),
  );
  // The ground fills most of a chart, and takes the first symbol: a single point keeps it calm.
  const ordered = [dot];
  for (const size of BLOCKS) {
    const block: number[] = [];
    while (ordered.length + block.length < size) block.push(next([...ordered, ...block], ordered.length));
    polish(ordered, block);
    inOrder(ordered, block);
  }
  return ordered;
}

/** The simplest of those that are about as far from all the others as can be. */
function next(others: readonly number[], settled: number): number {
  const full = portions.filter(
    ({ is, oneIn }) =>
      others.filter((index) => is(pool[index]!.drawing)).length >= Math.ceil((others.length + 1) / oneIn),
  );
  const open = pool
    .map((_, index) => index)
    .filter((index) => !others.includes(index) && !full.some(({ is }) => is(pool[index]!.drawing)))
    .filter((index) => pool[index]!.print.inkPx <= mostInk(others.length) * cellPx(150) ** 2);
  const room = new Map(
    open.map((index) => [index, nearest(index, others, Math.max(settled, others.length))]),
  );
  const best = Math.max(...room.values());
  const equals = open.filter((index) => room.get(index)! >= best * AMONG_EQUALS);
  return equals.sort((a, b) => pool[a]!.unrest - pool[b]!.unrest || room.get(b)! - room.get(a)! || a - b)[0]!;
}

/** Replaces a symbol of the closest pair as long as another drawing stands farther from all the rest. */
function polish(settled: readonly number[], block: number[]): void {
  for (let round = 0; round < 200; round++) {
    const all = [...settled, ...block];
    const spaces = block.map((index) => nearest(index, all, all.length));
    const worst = [...spaces.keys()].sort((a, b) => spaces[a]! - spaces[b]!);
    const improved = worst.slice(0, 4).some((place) => {
      const others = all.filter((index) => index !== block[place]);
      const better = next(others, all.length - 1);
      if (nearest(better, others, all.length) <= spaces[place]! * 1.01) return false;
      block[place] = better;
      return true;
    });
    if (!improved) return;
  }
}

/** Moves a block behind what is ordered, farthest first. */
function inOrder(ordered: number[], block: number[]): void {
  const left = [...block];
  while (left.length > 0) {
    const room = left.map((index) => nearest(index, ordered, ordered.length + 1));
    const best = Math.max(...room);
    const equals = left.filter((_, i) => room[i]! >= best * AMONG_EQUALS);
    const first = equals.sort((a, b) => pool[a]!.unrest - pool[b]!.unrest || a - b)[0]!;
    ordered.push(first);
    left.splice(left.indexOf(first), 1);
  }
}

function nearest(index: number, others: readonly number[], size: number): number {
  const grace = size <= NO_TWINS ? 0 : TWIN_GRACE;
  let least = Number.POSITIVE_INFINITY;
  for (const other of others) {
    if (other === index) continue;
    const { standing, turned } = distancesFrom(other);
    least = Math.min(least, standing[index]!, turned[index]! + grace);
  }
  return least;
}

function nearestPair(indices: readonly number[]): number {
  return Math.min(...indices.map((index) => nearest(index, indices, 64)));
}

function distancesFrom(index: number): Distances {
  const found = known.get(index);
  if (found) return found;
  const [own, ...others] = twins(pool[index]!.drawing).map((twin) => print(oneBit(twin, cellPx(150))));
  const standing = Float64Array.from(pool, (each) => apart(own!, each.print));
  const turned = Float64Array.from(pool, (each) =>
    Math.min(...others.map((twin) => apart(twin, each.print))),
  );
  const distances = { standing, turned };
  known.set(index, distances);
  return distances;
}

/**
 * Between the pixels by which two differ, which favours heavy drawings, and that as a share of their ink, which
 * favours light ones.
 */
function apart(a: Print, b: Print): number {
  return differencePx(a, b, shifts) / Math.sqrt(a.inkPx + b.inkPx);
}

function toJson(drawings: readonly Drawing[]): string {
  const lines = drawings.map(({ strokes, dots, fills }, i) =>
    JSON.stringify({ text: TEXTS[i], strokes, dots, fills, outline: solidOutline({ strokes, dots, fills }) }),
  );
  return `[\n  ${lines.join(',\n  ')}\n]\n`;
}
