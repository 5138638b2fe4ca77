/** How long the hanging takes, at the maker's own rates. */
import type { Rates } from '../design/schema.ts';

export interface Work {
  readonly knots: number;
  /** Attached or joined. */
  readonly pieces: number;
  /** Rows with at least one knot: nothing is done for a bare one. */
  readonly tiedRows: number;
  readonly cutCords: number;
  readonly looseEnds: number;
}

/** In seconds. */
export function workSeconds(work: Work, rates: Rates): number {
  return (
    work.knots * rates.secondsPerKnot +
    work.pieces * rates.secondsPerPiece +
    work.tiedRows * rates.secondsPerRow +
    work.cutCords * rates.secondsPerMount +
    work.looseEnds * rates.secondsPerLooseEnd +
    rates.secondsToFinish
  );
}
