/** What each yarn is needed for, how much of it, and what of it is still to be bought. */
import type { Design } from '../design/design.ts';
import { knotMm } from '../gauge/gauge.ts';
import { type GaugeSpread, spreadOf } from '../gauge/gauge-spread.ts';
import type { PlainPlan } from '../tying/plan.ts';
import { buyingOf } from './buying.ts';
import { piecesIfLoose } from './if-loose.ts';
import type { YarnNeed } from './materials.ts';
import { skeinMm, wholeSkeins, yarnMassG } from './skeins.ts';
import type { UncertainNeeds } from './uncertain-needs.ts';

/**
 * One for each yarn that ties a knot, in the design's order. What is bought is what is cut: pieces by their cut
 * length, not what the knots use; and the margin for mistakes and swatches on top of that.
 */
export function yarnNeeds(
  design: Design,
  plan: PlainPlan,
  needs: Pick<UncertainNeeds, 'perYarn'>,
  spread: GaugeSpread,
): YarnNeed[] {
  const { yarns, yarnMargin } = design;
  const looseKnotMm = Object.fromEntries(
    yarns.map((yarn) => [yarn.id, spreadOf(spread, (gauge) => knotMm(design, yarn, gauge)).high]),
  );
  const pieces = piecesIfLoose(plan, looseKnotMm);
  return yarns.flatMap((yarn): YarnNeed[] => {
    const tally = plan.perYarn[yarn.id];
    const uncertain = needs.perYarn[yarn.id];
    if (!tally || !uncertain) return [];
    const withMarginMm = tally.cutMm * (1 + yarnMargin);
    const inSkein = skeinMm(yarn);
    const looseMm = (pieces[yarn.id] ?? 0) * plan.settings.workingLengthMm;
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
        ifLoose: {
          pieces: pieces[yarn.id] ?? 0,
          cutMm: looseMm,
          skeins: wholeSkeins(looseMm * (1 + yarnMargin), inSkein),
        },
        uncertain,
      },
    ];
  });
}
