/** The quick plan: the cheapest path cover (`path-cover.ts`) with the best pieces (`best-pieces.ts`). */

import { pathCover } from '../cover/path-cover.ts';
import { weighLinks } from '../cover/weighed-links.ts';
import { choiceOf } from '../improve/choice-of.ts';
import { bestPieces, type PiecedStrands } from '../pieces/best-pieces.ts';
import { Links } from '../question/links.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';

export function planQuickly(question: PlanQuestion): StrandChoice {
  return choiceOf(question, quickStrands(question, new Links(question)));
}

export function quickStrands(question: PlanQuestion, links: Links): PiecedStrands {
  return bestPieces(question, pathCover(question, weighLinks(question, links)).previous);
}
