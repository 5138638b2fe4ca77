import type { PlanTables } from '../plans/plan-tables.ts';

export function strandsOfYarn({ strands }: PlanTables, yarn: number): number {
  return strands.yarn.reduce((count, each) => count + (each === yarn ? 1 : 0), 0);
}

/**
 * The place among all strands, from 1, of the one with a number among those of its yarn; null where there is none, and
 * where no number is given. `yarn` is the yarn's code.
 */
export function strandNumbered(
  { strands }: PlanTables,
  yarn: number,
  number: number | undefined,
): number | null {
  for (let s = 0; s < strands.count; s++)
    if (strands.yarn[s] === yarn && strands.number[s] === number) return s + 1;
  return null;
}
