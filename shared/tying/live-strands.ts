/** How many strands hang at the back between the rows. */
import type { PlanTotals } from './plan.ts';
import type { StrandChoice } from './question/strand-choice.ts';
import type { Runs } from './runs.ts';

/**
 * The most strands that hang at any boundary between two rows, and their mean over all boundaries to four decimals;
 * 0 where there is but one row. A strand hangs at a boundary where it has a knot above and one below, so between
 * the rows that a carry or turn leaves and reaches.
 */
export function liveStrands(
  rows: number,
  runs: Runs,
  { previous }: StrandChoice,
): Pick<PlanTotals, 'liveMax' | 'liveMean'> {
  const changes = new Int32Array(rows + 1);
  for (let run = 0; run < runs.count; run++) {
    const before = previous[run]!;
    if (before === -1) continue;
    changes[runs.row[before]!]!++;
    changes[runs.row[run]!]!--;
  }
  let live = 0;
  let sum = 0;
  let liveMax = 0;
  for (let row = 0; row < rows - 1; row++) {
    live += changes[row]!;
    sum += live;
    liveMax = Math.max(liveMax, live);
  }
  return { liveMax, liveMean: rows > 1 ? Math.round((sum / (rows - 1)) * 10_000) / 10_000 : 0 };
}
