/** Strands with their pieces as a planner gives them. */
import type { PiecedStrands } from './best-pieces.ts';
import type { PlanQuestion, StrandChoice } from './strand-choice.ts';
import { tieRun } from './tie-run.ts';

/** Joins come where a piece runs out. */
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
