/**
 * Where to cut and where to join, once it is decided which runs follow one another: for each strand the cheapest
 * pieces, by dynamic programming over its runs (`open-pieces.ts` tells why runs are enough and knots needn't be
 * looked at). Exact. It takes as long as the strand is long, times the few ways that are open at a time.
 *
 * A strand whose carry is cut becomes two.
 */
import { carryLength } from '../question/carry.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import { knotsOf } from '../runs.ts';
import {
  beginPieces,
  closedCost,
  noPieces,
  type OpenPieces,
  tieOpenPieces,
  type YarnToTie,
} from './open-pieces.ts';

export interface PiecedStrands {
  /** For each run, the run that its strand has tied before it; -1 where a strand begins. */
  readonly previous: Int32Array;
  /** For each run, what is left in the piece at hand before its first knot, in tenths. */
  readonly roomBefore: Float64Array;
  /** By the yarn's code: what its pieces and carries cost, in tenths. Rows tied already count for nothing. */
  readonly costs: Float64Array;
}

/** `previous` says which run follows which; it is not changed. */
export function bestPieces(question: PlanQuestion, previous: Int32Array): PiecedStrands {
  const { runs, tied } = question;
  const pieced = unpieced(question, previous);
  const firstFree = tied?.choice.previous.length ?? 0;
  const next = new Int32Array(runs.count).fill(-1);
  for (let run = firstFree; run < runs.count; run++) {
    if (previous[run] !== -1) next[previous[run]!] = run;
  }
  const desk: OpenPieces[] = [];
  for (let run = firstFree; run < runs.count; run++) {
    // Strands are followed from their first run that is still to be tied.
    if (previous[run]! < firstFree) pieceStrand(question, run, next, pieced, desk);
  }
  return pieced;
}

/** Strands whose pieces are still to be found. */
function unpieced({ runs, tenths }: PlanQuestion, previous: Int32Array): PiecedStrands {
  return {
    previous: previous.slice(),
    roomBefore: new Float64Array(runs.count).fill(tenths.room),
    costs: new Float64Array(tenths.knot.length),
  };
}

/**
 * Finds the pieces of the strand that goes on, or begins, with `first`, and cuts and fills in `pieced` what belongs
 * to its runs. `desk` is room to work in, used again from strand to strand.
 */
export function pieceStrand(
  question: PlanQuestion,
  first: number,
  next: Int32Array,
  pieced: PiecedStrands,
  desk: OpenPieces[],
): void {
  const { runs, tenths, pinned } = question;
  const { previous, costs } = pieced;
  const yarn = yarnToTie(question, runs.yarn[first]!);
  const strand: number[] = [];
  let open = hanging(question, previous[first]!);
  for (let run = first; run !== -1; run = next[run]!) {
    const into = desk[strand.length] ?? noPieces();
    desk[strand.length] = into;
    if (open) {
      const carry = carryLength(question, previous[run]!, run);
      const link = carry + tenths.rowPrice * (runs.row[run]! - runs.row[previous[run]!]!);
      tieOpenPieces(into, open, carry, link, knotsOf(runs, run), yarn, pinned?.held(run));
    } else beginPieces(into, knotsOf(runs, run), yarn, pinned?.held(run));
    open = into;
    strand.push(run);
  }
  costs[runs.yarn[first]!]! += closedCost(open!);
  follow(question, strand, desk, pieced);
}

/** What tying a yarn takes, in the measures of a question. */
export function yarnToTie({ tenths }: PlanQuestion, yarn: number): YarnToTie {
  return { knot: tenths.knot[yarn]!, room: tenths.room, attach: tenths.attach };
}

/** The one way in which a strand of the rows tied already hangs after `run`; null where the strand begins. */
export function hanging({ tenths, tied }: PlanQuestion, run: number): OpenPieces | null {
  if (run === -1 || !tied) return null;
  return { size: 1, used: [tenths.room - tied.roomAfter[run]!], cost: [0], origin: [-1] };
}

/** Follows the cheapest way back from the strand's last run, and cuts carries where a fresh piece begins. */
function follow(
  question: PlanQuestion,
  strand: readonly number[],
  ways: readonly OpenPieces[],
  { previous, roomBefore }: PiecedStrands,
): void {
  let way = ways[strand.length - 1]!.size - 1;
  for (let at = strand.length - 1; at >= 0; at--) {
    const run = strand[at]!;
    const before = previous[run]!;
    way = ways[at]!.origin[way]!;
    if (way === -1) {
      previous[run] = -1;
      // The ways before are free again: the cheapest one leads here.
      if (at > 0) way = ways[at - 1]!.size - 1;
      continue;
    }
    const open = at > 0 ? ways[at - 1]! : hanging(question, before)!;
    roomBefore[run] = question.tenths.room - open.used[way]! - carryLength(question, before, run);
  }
}
