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
  { newOf, oldOf }: KeptRuns,
  old: Cover,
  pieces: Pieces,
  cover: Cover,
): Pieces {
  const pieced = unpieced(question, cover.previous);
  const desk: OpenPieces[] = [];
  for (let first = 0; first < question.runs.count; first++) {
    if (cover.previous[first] !== -1) continue;
    if (isAsItWas(first)) keep(first);
    else pieceStrand(question, first, cover.next, pieced, desk);
  }
  return pieced;

  function isAsItWas(first: number): boolean {
    for (let run = first; run !== -1; run = cover.next[run]!) {
      const was = oldOf[run]!;
      if (was === -1) return false;
      const before = old.previous[was]!;
      if ((before === -1 ? -1 : newOf[before]!) !== cover.previous[run]) return false;
      if (before !== -1 && run === first) return false;
      if (cover.next[run] === -1 && old.next[was] !== -1) return false;
    }
    return true;
  }

  function keep(first: number): void {
    for (let run = first; run !== -1; run = cover.next[run]!) {
      const was = oldOf[run]!;
      if (pieces.previous[was] === -1) pieced.previous[run] = -1;
      pieced.roomBefore[run] = pieces.roomBefore[was]!;
    }
  }
}
