/** The quick plan: the cheapest path cover (`path-cover.ts`) with the best pieces (`best-pieces.ts`). */
import { bestPieces, type PiecedStrands } from './best-pieces.ts';
import { choiceOf } from './choice-of.ts';
import { Links } from './links.ts';
import { pathCover } from './path-cover.ts';
import type { PlanQuestion, StrandChoice } from './strand-choice.ts';
import { weighLinks } from './weighed-links.ts';

export function planQuickly(question: PlanQuestion): StrandChoice {
  return choiceOf(question, quickStrands(question, new Links(question)));
}

export function quickStrands(question: PlanQuestion, links: Links): PiecedStrands {
  return bestPieces(question, pathCover(question, weighLinks(question, links)).previous);
}
