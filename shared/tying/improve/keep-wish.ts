/**
 * Keeps strands under a wished number that hang at once, for certain: as long as too many hang at some boundary, the
 * carry is cut that costs least for what it relieves. To cut always helps, so it always ends; carries of rows that are
 * tied already can't be cut, and stay; so do those that the maker has pinned, of which no more are obeyed than the wish
 * allows.
 */
import { bestPieces, type PiecedStrands } from '../pieces/best-pieces.ts';
import type { PlanQuestion } from '../question/strand-choice.ts';
import { Crowd } from './crowd.ts';
import { StrandTables } from './strand-tables.ts';

export function keepWish(question: PlanQuestion, strands: PiecedStrands, wish: number): PiecedStrands {
  const { runs, tied, pinned } = question;
  const firstFree = tied?.choice.previous.length ?? 0;
  const tables = new StrandTables(question, strands.previous);
  const crowd = new Crowd(question, strands.previous, wish);
  let boundary = crowd.worst();
  let cut = 0;
  while (boundary !== -1) {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let run = firstFree; run < runs.count; run++) {
      const before = tables.previous[run]!;
      if (before === -1 || pinned?.after[before] === run) continue;
      if (runs.row[before]! > boundary || runs.row[run]! <= boundary) continue;
      const loss = tables.costUpTo(before) + tables.costFrom(run) - tables.costAcross(before, run);
      const price = loss / crowd.relief(before, run);
      if (price >= least) continue;
      least = price;
      best = run;
    }
    if (best === -1) {
      // Only what is tied or pinned hangs there; elsewhere there may still be something to cut.
      crowd.giveUp(boundary);
      boundary = crowd.worst();
      continue;
    }
    const before = tables.previous[best]!;
    crowd.cut(before, best);
    tables.cut(before, best);
    tables.renew(before, best);
    boundary = crowd.worst();
    cut++;
  }
  return cut === 0 ? strands : bestPieces(question, tables.previous);
}
