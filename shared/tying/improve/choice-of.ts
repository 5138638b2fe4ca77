/** Strands with their pieces as a planner gives them. */
import type { PiecedStrands } from '../pieces/best-pieces.ts';
import { carryLength } from '../question/carry.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { tieRun } from '../question/tie-run.ts';
import { knotsOf } from '../runs.ts';

/**
 * Joins come where a piece runs out, and before the last knot of a run where a pinned carry needs more room than its
 * piece has left.
 */
export function choiceOf(
  question: PlanQuestion,
  { previous, roomBefore }: Pick<PiecedStrands, 'previous' | 'roomBefore'>,
): StrandChoice {
  const { runs, tenths, tied, pinned } = question;
  const joins = [...(tied?.choice.joins ?? [])];
  for (let run = tied?.choice.previous.length ?? 0; run < runs.count; run++) {
    const left = tieRun(runs, run, tenths, roomBefore[run]!, joins);
    const next = pinned?.after[run] ?? -1;
    if (next !== -1 && left - carryLength(question, run, next) !== roomBefore[next])
      joins.push(run, knotsOf(runs, run) - 1);
  }
  return { previous, joins };
}
