/**
 * Writes out a plan from what a planner decided: strands, their pieces and stretches, and every total. Everything is
 * counted once, in whole tenths of a mm, and turned into mm where it is written.
 */
import { codeOf, type YarnId, yarnIdOf } from '../../design/codes.ts';
import { liveStrands } from '../live-strands.ts';
import {
  type Piece,
  PLAN_FORMAT,
  PLAN_VERSION,
  PLANNER_VERSION,
  type PlainPlan,
  type Plan,
  type PlanTotals,
  type Stretch,
  type YarnTally,
} from '../plan.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { knotsOf, type Runs } from '../runs.ts';
import { fromTenths, type Tenths } from '../tenths.ts';

/** The plan as it is published, tied to its chart. */
export function publishedPlan(plain: PlainPlan, chartHash: string): Plan {
  const { format, version, columns, rows, startCorner, plannerVersion, ...rest } = plain;
  // In the published order of keys.
  return { format, version, columns, rows, startCorner, plannerVersion, chartHash, ...rest };
}

export function assemblePlan(question: PlanQuestion, choice: StrandChoice): PlainPlan {
  const { chart, runs, settings, tenths, tied, pinned } = question;
  const way = wayThrough(runs, choice);
  const counts = new Map<number, Count>();
  const strands: Plan['strands'] = [];
  for (let run = 0; run < runs.count; run++) {
    if (choice.previous[run] !== -1) continue;
    const yarn = runs.yarn[run]!;
    const count = counts.get(yarn) ?? { ...nothing };
    counts.set(yarn, count);
    strands.push({ yarn: yarnIdOf(yarn), pieces: piecesFrom(run, way, question, count) });
  }
  const perYarn: Plan['perYarn'] = {};
  // In the order of the settings, which is the design's.
  for (const id of Object.keys(settings.knotMm) as YarnId[]) {
    perYarn[id] = tallyOf(counts.get(codeOf(id))!, tenths);
  }
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    columns: chart.columns,
    rows: chart.rows,
    startCorner: chart.startCorner,
    plannerVersion: PLANNER_VERSION,
    pins: pinned?.obeyed ?? [],
    frozenRows: tied?.rows ?? 0,
    settings,
    strands,
    totals: totalsOf([...counts.values()], tenths, liveStrands(chart.rows, runs, choice)),
    perYarn,
  };
}

/** What one yarn adds up to; lengths in tenths of a mm. */
interface Count {
  knots: number;
  strands: number;
  pieces: number;
  carries: number;
  turns: number;
  knotted: number;
  carried: number;
  rowsParked: number;
}

const nothing: Count = {
  knots: 0,
  strands: 0,
  pieces: 0,
  carries: 0,
  turns: 0,
  knotted: 0,
  carried: 0,
  rowsParked: 0,
};

/** The planner's choice, to be followed from a strand's first run on. */
interface Way {
  /** The run that comes next on the same strand, or -1. */
  readonly next: Int32Array;
  /** For each run, where its pairs begin in `joins`; it has none where the pair there is another run's. */
  readonly joinsAt: Int32Array;
  readonly joins: readonly number[];
}

function wayThrough(runs: Runs, { previous, joins }: StrandChoice): Way {
  const next = new Int32Array(runs.count).fill(-1);
  const joinsAt = new Int32Array(runs.count);
  let at = 0;
  for (let run = 0; run < runs.count; run++) {
    if (previous[run] !== -1) next[previous[run]!] = run;
    joinsAt[run] = at;
    while (joins[at] === run) at += 2;
  }
  return { next, joinsAt, joins };
}

/** The pieces of the strand that begins with `first`; what they hold is added to `count`. */
function piecesFrom(first: number, way: Way, question: PlanQuestion, count: Count): Piece[] {
  const { runs, tenths } = question;
  const knot = tenths.knot[runs.yarn[first]!]!;
  const pieces: Piece[] = [];
  let stretches: Stretch[] = [];
  let knots = 0;
  let carried = 0;
  const cut = () => {
    count.pieces++;
    count.knots += knots;
    count.knotted += knots * knot;
    count.carried += carried;
    pieces.push(pieceOf(stretches, knots, knots * knot, carried, tenths));
    stretches = [];
    knots = 0;
    carried = 0;
  };
  let before = -1;
  for (let run = first; run !== -1; run = way.next[run]!) {
    if (before !== -1) carried += carryBetween(before, run, question, count);
    let tied = 0;
    for (let at = way.joinsAt[run]!; way.joins[at] === run; at += 2) {
      const upTo = way.joins[at + 1]!;
      stretches.push(stretchOf(runs, run, tied, upTo));
      knots += upTo - tied;
      tied = upTo;
      cut();
    }
    stretches.push(stretchOf(runs, run, tied, knotsOf(runs, run)));
    knots += knotsOf(runs, run) - tied;
    before = run;
  }
  cut();
  count.strands++;
  return pieces;
}

/** The carry or turn from the end of one run to the start of another, in tenths. */
function carryBetween(from: number, to: number, { runs, tenths }: PlanQuestion, count: Count): number {
  const cords = Math.abs(runs.first[to]! - runs.last[from]!);
  const rows = runs.row[to]! - runs.row[from]!;
  // Straight down to the next row is the turn; everything else is a carry.
  if (cords === 0 && rows === 1) count.turns++;
  else count.carries++;
  count.rowsParked += rows;
  return tenths.carry(cords, rows);
}

/** Knots `from` up to but not including `to` of a run, both from 0. */
function stretchOf(runs: Runs, run: number, from: number, to: number): Stretch {
  const start = runs.first[run]! + 1;
  const step = runs.last[run]! < runs.first[run]! ? -1 : 1;
  return { row: runs.row[run]! + 1, from: start + step * from, to: start + step * (to - 1) };
}

function pieceOf(
  stretches: Stretch[],
  knots: number,
  knotted: number,
  carried: number,
  { cut, tail }: Tenths,
): Piece {
  const used = knotted + carried + 2 * tail;
  return {
    stretches,
    knots,
    knottedMm: fromTenths(knotted),
    carriedMm: fromTenths(carried),
    usedMm: fromTenths(used),
    cutMm: fromTenths(cut),
    leftOverMm: fromTenths(cut - used),
  };
}

function tallyOf({ knots, strands, pieces, knotted, carried }: Count, { tail, cut }: Tenths): YarnTally {
  const tails = pieces * 2 * tail;
  const used = knotted + carried + tails;
  return {
    knots,
    strands,
    pieces,
    knottedMm: fromTenths(knotted),
    carriedMm: fromTenths(carried),
    tailsMm: fromTenths(tails),
    usedMm: fromTenths(used),
    cutMm: fromTenths(pieces * cut),
    leftOverMm: fromTenths(pieces * cut - used),
  };
}

function totalsOf(
  counts: readonly Count[],
  { tail, cut, attach, rowPrice }: Tenths,
  live: Pick<PlanTotals, 'liveMax' | 'liveMean'>,
): PlanTotals {
  const sum = (of: keyof Count) => counts.reduce((total, count) => total + count[of], 0);
  const pieces = sum('pieces');
  const strands = sum('strands');
  const carried = sum('carried');
  return {
    knots: sum('knots'),
    strands,
    pieces,
    joins: pieces - strands,
    looseEnds: 2 * pieces,
    carries: sum('carries'),
    turns: sum('turns'),
    carriedMm: fromTenths(carried),
    usedMm: fromTenths(sum('knotted') + carried + pieces * 2 * tail),
    cutMm: fromTenths(pieces * cut),
    ...live,
    costMm: fromTenths(attach * pieces + carried + rowPrice * sum('rowsParked')),
  };
}
