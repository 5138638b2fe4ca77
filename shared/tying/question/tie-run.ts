/** Tying one run with each piece used until it runs out. */
import { knotsOf, type Runs } from '../runs.ts';
import type { Tenths } from '../tenths.ts';

/**
 * What is left in the piece after run `run`, in tenths of a mm. `room` is what the piece held before its first knot,
 * at least one knot's worth. Where the next knot doesn't fit, the pair of run and knot is added to `joins`.
 */
export function tieRun(runs: Runs, run: number, tenths: Tenths, room: number, joins: number[]): number {
  const knot = tenths.knot[runs.yarn[run]!]!;
  let left = knotsOf(runs, run);
  let fit = Math.floor(room / knot);
  while (left > fit) {
    left -= fit;
    joins.push(run, knotsOf(runs, run) - left);
    room = tenths.room;
    fit = Math.floor(room / knot);
  }
  return room - left * knot;
}
