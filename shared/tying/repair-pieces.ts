/** The best pieces of a chart that has changed a little: only strands that are not what they were are looked at. */
import { type PiecedStrands, pieceStrand, unpieced } from './best-pieces.ts';
import type { Cover } from './cover.ts';
import type { KeptRuns } from './kept-runs.ts';
import type { OpenPieces } from './open-pieces.ts';
import type { PlanQuestion } from './strand-choice.ts';

type Pieces = Pick<PiecedStrands, 'previous' | 'roomBefore'>;

/** `pieces` are those of the `old` cover; gives those of `cover`. No row may be tied already. */
export function repairPieces(
  question: PlanQuestion,
  kept: KeptRuns,
  old: Cover,
  pieces: Pieces,
  cover: Cover,
): Pieces {
  const pieced = unpieced(question, cover.previous);
  const changed = changedStrands(kept, old, cover);
  for (let run = 0; run < question.runs.count; run++) {
    const was = kept.oldOf[run]!;
    if (was === -1) continue;
    if (pieces.previous[was] === -1) pieced.previous[run] = -1;
    pieced.roomBefore[run] = pieces.roomBefore[was]!;
  }
  const desk: OpenPieces[] = [];
  for (const first of changed) {
    for (let run = first; run !== -1; run = cover.next[run]!) {
      pieced.previous[run] = cover.previous[run]!;
      pieced.roomBefore[run] = question.tenths.room;
    }
    pieceStrand(question, first, cover.next, pieced, desk);
  }
  return pieced;
}

/** The first runs of strands that are not run for run what a strand was. */
function changedStrands({ newOf, oldOf }: KeptRuns, old: Cover, cover: Cover): Set<number> {
  const firsts = new Set<number>();
  for (let run = 0; run < oldOf.length; run++) {
    const was = oldOf[run]!;
    if (
      was !== -1 &&
      moved(old.previous[was]!) === cover.previous[run] &&
      moved(old.next[was]!) === cover.next[run]
    )
      continue;
    let first = run;
    while (cover.previous[first] !== -1) first = cover.previous[first]!;
    firsts.add(first);
  }
  return firsts;

  /** What the old run is now; -2 where it is no more. */
  function moved(was: number): number {
    if (was === -1) return -1;
    return newOf[was] === -1 ? -2 : newOf[was]!;
  }
}
