/**
 * The full plan: of each yarn the quick plan's strands (`plan-quickly.ts`) or the careful person's with the best
 * pieces, whichever cost less, improved as a whole by a bounded search (`cool-strands.ts`), since which runs follow one
 * another and where pieces end are decided best together. A yarn that the search made no cheaper keeps what it had, so
 * none costs more than by the quick plan, or than the careful person's strands.
 */

import { carefulPerson } from '../careful-person/careful-person.ts';
import { cheaperByYarn } from '../improve/cheaper-by-yarn.ts';
import { choiceOf } from '../improve/choice-of.ts';
import { coolStrands } from '../improve/cool-strands.ts';
import { Crowd } from '../improve/crowd.ts';
import { keepWish } from '../improve/keep-wish.ts';
import { seededChance } from '../improve/seeded-chance.ts';
import { StrandTables } from '../improve/strand-tables.ts';
import { bestPieces, type PiecedStrands } from '../pieces/best-pieces.ts';
import { Links } from '../question/links.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { quickStrands } from './plan-quickly.ts';

/**
 * Gives the share that is done now and then; whoever wants no more of it asks no further. With a wish no more strands
 * hang at once than so many, between any two rows that are still to be tied.
 */
export function* planFully(question: PlanQuestion, liveWish?: number): Generator<number, StrandChoice> {
  const links = new Links(question);
  const quick = quickStrands(question, links);
  // Each of these parts takes up to a tenth of a second, so there is a step between any two.
  yield 0;
  // The careful person begins with bare cords.
  const start = question.tied ? quick : cheaperByYarn(question, quick, carefulStrands(question));
  yield 0;
  const tables = new StrandTables(question, start.previous);
  const crowd = liveWish === undefined ? null : new Crowd(question, start.previous, liveWish);
  yield 0;
  const tries = Math.min(mostTries, triesPerRun * question.runs.count);
  yield* coolStrands(question, links, tables, tries, seededChance(1), crowd);
  const cooled = bestPieces(question, tables.previous);
  if (liveWish !== undefined) return choiceOf(question, keepWish(question, cooled, liveWish));
  return choiceOf(question, cheaperByYarn(question, start, cooled));
}

/** The careful person's strands with the best pieces, cut and carried where the maker's pins will have it otherwise. */
function carefulStrands(question: PlanQuestion): PiecedStrands {
  const { pinned } = question;
  const { previous } = carefulPerson(question);
  if (!pinned) return bestPieces(question, previous);
  return bestPieces(
    question,
    previous.map((before, run) => {
      if (pinned.before[run] !== -1) return pinned.before[run]!;
      return before !== -1 && pinned.mayLink(before, run) ? before : -1;
    }),
  );
}

/** Twice as many save another tenth of a per cent. */
const triesPerRun = 200;

/** On charts of more than 12,500 runs each run is tried less often: a plan takes seconds, not minutes. */
const mostTries = 2_500_000;
