/**
 * How each swatch differs from the others together: where one was measured wrongly, or tied on another day by a tighter
 * hand, it stands out here. Swatches of another thickness are compared as the fit compares them (`fit-swatches.ts`).
 */
import { fitSwatches, type Measured, type SwatchFit } from './fit-swatches.ts';
import { measuredSwatches } from './told-gauge.ts';

export interface SwatchDifference {
  /** Own cord's width, row's height and yarn in a knot against those of the others: 0.04 is 4 % more. */
  readonly acrossShare: number;
  readonly downShare: number;
  /** Null where its yarn was not measured, or none of the others'. */
  readonly yarnShare: number | null;
}

/** One for each swatch, in their order; null for a swatch that has no others to be compared with, and for a gauge that is told. */
export function swatchDifferences(design: Measured): (SwatchDifference | null)[] {
  const measured = measuredSwatches(design.swatches);
  return design.swatches.map((swatch, i) => {
    if (swatch.told || measured.length < 2) return null;
    const own = fitSwatches({ ...design, swatches: [swatch] });
    const others = fitSwatches({ ...design, swatches: measuredSwatches(design.swatches.toSpliced(i, 1)) });
    return {
      acrossShare: own.pitchMm.value / others.pitchMm.value - 1,
      downShare: own.rowHeightMm.value / others.rowHeightMm.value - 1,
      yarnShare: yarnShare(own, others),
    };
  });
}

function yarnShare(own: SwatchFit, others: SwatchFit): number | null {
  return own.knotMm && others.knotMm ? own.knotMm.value / others.knotMm.value - 1 : null;
}
