/** The best pieces of a chart that has changed a little: only strands that are not what they were are looked at. */
import { type PiecedStrands, pieceStrand } from '../pieces/best-pieces.ts';
import type { OpenPieces } from '../pieces/open-pieces.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import type { KeptRuns } from './kept-runs.ts';
import type { RepairedCover } from './repair-cover.ts';

type Pieces = Pick<PiecedStrands, 'previous' | 'roomBefore'>;

/** `pieces` are those of the cover before; gives those of `cover`. `desk` is room to work in. No row may be tied already. */
export function repairPieces(
  question: PlanQuestion,
  kept: KeptRuns,
  pieces: Pieces,
  cover: RepairedCover,
  desk: OpenPieces[],
): Pieces {
  const pieced: PiecedStrands = {
    previous: kept.movedRuns(pieces.previous),
    roomBefore: kept.moved(pieces.roomBefore),
    costs: new Float64Array(question.tenths.knot.length),
  };
  for (const first of firstsOf(cover)) {
    for (let run = first; run !== -1; run = cover.next[run]!) {
      pieced.previous[run] = cover.previous[run]!;
      pieced.roomBefore[run] = question.tenths.room;
    }
    pieceStrand(question, first, cover.next, pieced, desk);
  }
  return pieced;
}

/** The first runs of strands that are not run for run what a strand was. */
function firstsOf({ previous, changed }: RepairedCover): Set<number> {
  const firsts = new Set<number>();
  for (const run of changed) {
    let first = run;
    while (previous[first] !== -1) first = previous[first]!;
    firsts.add(first);
  }
  return firsts;
}
