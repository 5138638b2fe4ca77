import type { Chart } from '../../../shared/chart/chart.ts';

/** Why nothing was tidied, where `left` lone knots stay; a person can do something about it where it is a problem. */
export function whyNotTidy({ cells }: Chart, left: number): { sentence: string; isProblem: boolean } {
  if (left === 0) return { sentence: 'Nothing to tidy: this picture has no lone knots.', isProblem: false };
  if (cells.length === 1)
    return {
      sentence: 'Nothing to tidy: a chart’s only knot has none beside it whose yarn it could take.',
      isProblem: false,
    };
  return { sentence: 'All lone knots are on locked layers. Unlock a layer to tidy it.', isProblem: true };
}
