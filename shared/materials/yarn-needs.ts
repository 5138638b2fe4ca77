/** What each yarn is needed for, how much of it, and what of it is still to be bought. */
import type { Design } from '../design/design.ts';
import type { PlainPlan } from '../tying/plan.ts';
import { buyingOf } from './buying.ts';
import type { YarnNeed } from './materials.ts';
import { skeinMm, wholeSkeins, yarnMassG } from './skeins.ts';
import type { UncertainNeeds } from './uncertain-needs.ts';

/**
 * One for each yarn that ties a knot, in the design's order. What is bought is what is cut: pieces by their cut
 * length, not what the knots use; and the margin for mistakes and swatches on top of that.
 */
export function yarnNeeds(
  { yarns, yarnMargin }: Pick<Design, 'yarns' | 'yarnMargin'>,
  plan: PlainPlan,
  needs: Pick<UncertainNeeds, 'perYarn'>,
): YarnNeed[] {
  return yarns.flatMap((yarn): YarnNeed[] => {
    const tally = plan.perYarn[yarn.id];
    const need = needs.perYarn[yarn.id];
    if (!tally || !need) return [];
    const { loose, ...uncertain } = need;
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
        ...buyingOf(withMarginMm, inSkein, yarn),
        ifLoose: { ...loose, skeins: wholeSkeins(loose.cutMm, inSkein) },
        uncertain,
      },
    ];
  });
}
