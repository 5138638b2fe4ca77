/** What the maker has cut already against the cut list, which may have changed since. */
import { type CutPieces, isSameCut } from '../../design/bundle-edits.ts';
import type { Bundle } from './bundles.ts';

export interface CutSoFar {
  /** For each bundle of the list, how many pieces of its yarn and length are cut: fewer than it has, as many, or more. */
  readonly counts: readonly number[];
  /** Pieces that the list needs and that are cut. */
  readonly pieces: number;
  /** Pieces that are cut, of a yarn or a length that the list has not. */
  readonly spare: readonly CutPieces[];
}

export function cutSoFar(bundles: readonly Bundle[], cut: readonly CutPieces[]): CutSoFar {
  const counts = bundles.map((bundle) =>
    cut.filter((each) => isSameCut(each, bundle)).reduce((sum, { pieces }) => sum + pieces, 0),
  );
  return {
    counts,
    pieces: bundles.reduce((sum, bundle, i) => sum + Math.min(counts[i]!, bundle.pieces.length), 0),
    spare: cut.filter((each) => !bundles.some((bundle) => isSameCut(each, bundle))),
  };
}
