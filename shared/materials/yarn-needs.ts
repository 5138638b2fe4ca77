/** What each yarn is needed for, and how much of it. */
import type { Design } from '../design/design.ts';
import type { Plan } from '../tying/plan.ts';
import type { YarnNeed } from './materials.ts';
import { skeinMm, wholeSkeins, yarnMassG } from './skeins.ts';

/**
 * One for each yarn that ties a knot, in the design's order. What is bought is what is cut: pieces by their cut
 * length, not what the knots use; and the margin for mistakes and swatches on top of that.
 */
export function yarnNeeds({ yarns, yarnMargin }: Design, { perYarn }: Plan): YarnNeed[] {
  return yarns.flatMap((yarn): YarnNeed[] => {
    const tally = perYarn[yarn.id];
    if (!tally) return [];
    const withMarginMm = tally.cutMm * (1 + yarnMargin);
    const inSkein = skeinMm(yarn);
    return [
      {
        id: yarn.id,
        name: yarn.name,
        symbol: yarn.symbol,
        color: yarn.color,
        ...tally,
        withMarginMm,
        massG: yarnMassG(tally.cutMm, yarn),
        skeinMm: inSkein,
        skeins: wholeSkeins(withMarginMm, inSkein),
      },
    ];
  });
}
