/** A carry or turn from the end of one run to the start of another. */
import type { PlanQuestion } from './strand-choice.ts';

/** The yarn that lies between the two runs, in tenths of a mm, slack included. */
export function carryLength(
  { runs, tenths }: Pick<PlanQuestion, 'runs' | 'tenths'>,
  from: number,
  to: number,
): number {
  const cords = Math.abs(runs.first[to]! - runs.last[from]!);
  return tenths.carry(cords, runs.row[to]! - runs.row[from]!);
}
