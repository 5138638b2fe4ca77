/** A carry or turn from the end of one run to the start of another: its length, and what keeping it costs. */
import type { PlanQuestion } from './strand-choice.ts';

type Measures = Pick<PlanQuestion, 'runs' | 'tenths'>;

/** The yarn that lies between the two runs, in tenths of a mm, slack included. */
export function carryLength({ runs, tenths }: Measures, from: number, to: number): number {
  const cords = Math.abs(runs.first[to]! - runs.last[from]!);
  return tenths.carry(cords, runs.row[to]! - runs.row[from]!);
}

/** What the planner pays for it, in tenths: its length, and the row price for each row that the strand hangs. */
export function carryCost(measures: Measures, from: number, to: number): number {
  const rows = measures.runs.row[to]! - measures.runs.row[from]!;
  return carryLength(measures, from, to) + measures.tenths.rowPrice * rows;
}
