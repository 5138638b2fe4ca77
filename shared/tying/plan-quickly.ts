/**
 * The quick plan: for each yarn the cheapest path cover (`path-cover.ts`) with the best pieces (`best-pieces.ts`), or
 * the careful person's strands with the best pieces where those cost less: the cover doesn't know that pieces end.
 */
import { bestPieces, choiceOf, type PiecedStrands } from './best-pieces.ts';
import { carefulPerson } from './careful-person.ts';
import { Links } from './links.ts';
import { pathCover } from './path-cover.ts';
import type { PlanQuestion, StrandChoice } from './strand-choice.ts';
import { weighLinks } from './weighed-links.ts';

export function planQuickly(question: PlanQuestion): StrandChoice {
  return choiceOf(question, quickStrands(question, new Links(question)));
}

export function quickStrands(question: PlanQuestion, links: Links): PiecedStrands {
  const { previous } = pathCover(question, weighLinks(question, links));
  const covered = bestPieces(question, previous);
  const careful = bestPieces(question, carefulPerson(question).previous);
  return cheaperByYarn(question, covered, careful);
}

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
