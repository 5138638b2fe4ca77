/**
 * The full plan: the quick one (`plan-quickly.ts`), improved as a whole by a bounded search (`cool-strands.ts`), since
 * which runs follow one another and where pieces end are decided best together. A yarn whose strands the search made
 * no cheaper keeps those of the quick plan, so no yarn costs more than by the quick plan.
 */
import { bestPieces, choiceOf } from './best-pieces.ts';
import { coolStrands } from './cool-strands.ts';
import { Links } from './links.ts';
import { cheaperByYarn, quickStrands } from './plan-quickly.ts';
import { seededChance } from './seeded-chance.ts';
import type { PlanQuestion, StrandChoice } from './strand-choice.ts';
import { StrandTables } from './strand-tables.ts';

/** Gives the share that is done now and then; whoever wants no more of it asks no further. */
export function* planFully(question: PlanQuestion): Generator<number, StrandChoice> {
  const links = new Links(question);
  const quick = quickStrands(question, links);
  yield 0;
  const tables = new StrandTables(question, quick.previous);
  const tries = Math.min(mostTries, triesPerRun * question.runs.count);
  yield* coolStrands(question, links, tables, tries, seededChance(1));
  return choiceOf(question, cheaperByYarn(question, quick, bestPieces(question, tables.previous)));
}

/** Twice as many save another tenth of a per cent. */
const triesPerRun = 200;

/** On charts of more than 12,500 runs each run is tried less often: a plan takes seconds, not minutes. */
const mostTries = 2_500_000;
