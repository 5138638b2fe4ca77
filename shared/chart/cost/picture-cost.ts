/**
 * What the picture costs its maker, for the eye to keep while drawing: what is fiddly to tie, and what it adds up to.
 */
import type { Materials } from '../../materials/materials.ts';
import type { Chart } from '../chart.ts';
import { loneKnots } from './lone-knots.ts';
import { shortRuns } from './short-runs.ts';

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

/** `materials` are those of the chart. */
export function pictureCost(chart: Chart, { totals }: Pick<Materials, 'totals'>): PictureCost {
  const { strands, pieces, looseEnds, seconds } = totals;
  return {
    loneKnots: marked(loneKnots(chart)),
    shortRuns: marked(shortRuns(chart)),
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
