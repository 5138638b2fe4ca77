/**
 * Where to cut and where to join, once it is decided which runs follow one another: for each strand the cheapest
 * pieces, by dynamic programming over its runs (`open-pieces.ts` tells why runs are enough and knots needn't be
 * looked at). Exact. It takes as long as the strand is long, times the few ways that are open at a time.
 *
 * A strand whose carry is cut becomes two.
 */
import { carryCost, carryLength } from './carry.ts';
import { closedCost, noPieces, type OpenPieces, type RunToTie, tieOpenPieces } from './open-pieces.ts';
import { knotsOf } from './runs.ts';
import type { PlanQuestion, StrandChoice } from './strand-choice.ts';
import { tieRun } from './tie-run.ts';

export interface PiecedStrands {
  /** For each run, the run that its strand has tied before it; -1 where a strand begins. */
  readonly previous: Int32Array;
  /** For each run, what is left in the piece at hand before its first knot, in tenths. */
  readonly roomBefore: Float64Array;
  /** By the yarn's code: what its pieces and carries cost, in tenths. Rows tied already count for nothing. */
  readonly costs: Float64Array;
}

/** `previous` says which run follows which; it is not changed. Only yarns with a 1 in `yarns`, if that is given. */
export function bestPieces(question: PlanQuestion, previous: Int32Array, yarns?: Uint8Array): PiecedStrands {
  const { runs, tenths, tied } = question;
  const pieced: PiecedStrands = {
    previous: previous.slice(),
    roomBefore: new Float64Array(runs.count).fill(tenths.room),
    costs: new Float64Array(tenths.knot.length),
  };
  const firstFree = tied?.choice.previous.length ?? 0;
  const next = new Int32Array(runs.count).fill(-1);
  for (let run = firstFree; run < runs.count; run++) {
    if (previous[run] !== -1) next[previous[run]!] = run;
  }
  const ways: OpenPieces[] = [];
  for (let run = firstFree; run < runs.count; run++) {
    const before = previous[run]!;
    // Strands are followed from their first run that is still to be tied.
    if (before >= firstFree || (yarns && yarns[runs.yarn[run]!] === 0)) continue;
    const strand: number[] = [];
    let open = hanging(question, before);
    for (let at = run; at !== -1; at = next[at]!) {
      const into = ways[strand.length] ?? noPieces();
      ways[strand.length] = into;
      const carry = open ? carryLength(question, previous[at]!, at) : 0;
      const link = open ? carryCost(question, previous[at]!, at) : 0;
      tieOpenPieces(into, open, carry, link, runToTie(question, at));
      open = into;
      strand.push(at);
    }
    pieced.costs[runs.yarn[run]!]! += closedCost(open!);
    follow(question, strand, ways, pieced);
  }
  return pieced;
}

/** The strands as a planner gives them: joins come where a piece runs out. */
export function choiceOf(
  { runs, tenths, tied }: PlanQuestion,
  { previous, roomBefore }: Pick<PiecedStrands, 'previous' | 'roomBefore'>,
): StrandChoice {
  const joins = [...(tied?.choice.joins ?? [])];
  for (let run = tied?.choice.previous.length ?? 0; run < runs.count; run++) {
    tieRun(runs, run, tenths, roomBefore[run]!, joins);
  }
  return { previous, joins };
}

/** What tying a run takes, in the measures of a question. */
export function runToTie({ runs, tenths }: PlanQuestion, run: number): RunToTie {
  return {
    knots: knotsOf(runs, run),
    knot: tenths.knot[runs.yarn[run]!]!,
    room: tenths.room,
    attach: tenths.attach,
  };
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
