import type { PiecedStrands } from '../pieces/best-pieces.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';

/** For each yarn the cheaper strands; those that come first where they cost the same. */
export function cheaperByYarn(
  { runs }: PlanQuestion,
  first: PiecedStrands,
  second: PiecedStrands,
): PiecedStrands {
  const previous = first.previous.slice();
  const roomBefore = first.roomBefore.slice();
  const costs = first.costs.map((cost, yarn) => Math.min(cost, second.costs[yarn]!));
  for (let run = 0; run < runs.count; run++) {
    const yarn = runs.yarn[run]!;
    if (second.costs[yarn]! >= first.costs[yarn]!) continue;
    previous[run] = second.previous[run]!;
    roomBefore[run] = second.roomBefore[run]!;
  }
  return { previous, roomBefore, costs };
}
