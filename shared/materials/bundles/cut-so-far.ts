/** What the maker has cut already against the cut list, which may have changed since. */
import type { BundleSettings } from '../../design/schema.ts';
import { toTenths } from '../../tying/tenths.ts';
import type { Bundle } from './bundles.ts';

export type CutPieces = NonNullable<BundleSettings['cut']>[number];

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
    cut.filter((each) => isAlike(each, bundle)).reduce((sum, { pieces }) => sum + pieces, 0),
  );
  return {
    counts,
    pieces: bundles.reduce((sum, bundle, i) => sum + Math.min(counts[i]!, bundle.pieces.length), 0),
    spare: cut.filter((each) => !bundles.some((bundle) => isAlike(each, bundle))),
  };
}

/** The list with so many pieces cut of a bundle's yarn and length; none takes it off the list. */
export function withCut(cut: readonly CutPieces[], bundle: Bundle, pieces: number): CutPieces[] {
  const others = cut.filter((each) => !isAlike(each, bundle));
  const { yarn, cutMm } = bundle;
  return pieces > 0 ? [...others, { yarn, cutMm, pieces }] : others;
}

/** Lengths are compared as they are published, in tenths of a mm. */
function isAlike(a: Pick<Bundle, 'yarn' | 'cutMm'>, b: Pick<Bundle, 'yarn' | 'cutMm'>): boolean {
  return a.yarn === b.yarn && toTenths(a.cutMm) === toTenths(b.cutMm);
}
