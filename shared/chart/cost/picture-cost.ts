/**
 * What the picture costs its maker, for the eye to keep while drawing: what is fiddly to tie, and what it adds up to.
 */
import type { Materials } from '../../materials/materials.ts';

export interface PictureCost {
  /** Knots with none of their yarn beside, above or below them. */
  readonly loneKnots: number;
  /** Runs of a single knot. */
  readonly shortRuns: number;
  readonly strands: number;
  readonly pieces: number;
  readonly looseEnds: number;
  /** The whole work at the maker's own rates. */
  readonly seconds: number;
}

/** A byte a cell, 1 where it is one: what `loneKnots` and `shortRuns` find. */
export interface CostMarks {
  readonly loneKnots: Uint8Array;
  readonly shortRuns: Uint8Array;
}

/** Marks and materials of one chart. */
export function pictureCost(marks: CostMarks, { totals }: Pick<Materials, 'totals'>): PictureCost {
  const { strands, pieces, looseEnds, seconds } = totals;
  return {
    loneKnots: marked(marks.loneKnots),
    shortRuns: marked(marks.shortRuns),
    strands,
    pieces,
    looseEnds,
    seconds,
  };
}

function marked(mask: Uint8Array): number {
  let count = 0;
  for (let cell = 0; cell < mask.length; cell++) count += mask[cell]!;
  return count;
}
