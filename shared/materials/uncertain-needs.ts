/**
 * How sure the yarn need is. All knots of all yarns are tied by the same hand, so their errors add up and nothing
 * averages out: the interval's ends are this very plan tied throughout by the tightest and by the loosest hand that
 * the swatches leave open (`plan-by-hand.ts`).
 *
 * What is used, `usedMm`, lies within its interval in 95 of 100 cases. What is cut is what the cut list says, whatever
 * the hand, until pieces run out: `cutMm.low` is the cut list's sum, `cutMm.high` what the loosest hand takes. `loose` is
 * that hand's, so that what is told of lengths and of pieces is told of the same hand.
 */
import type { YarnId } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import type { Yarn } from '../design/schema.ts';
import { knotMm } from '../gauge/gauge.ts';
import { type GaugeSpread, spreadOf } from '../gauge/gauge-spread.ts';
import type { PlainPlan } from '../tying/plan.ts';
import { sumOfUncertain, type Uncertain, uncertain } from '../units/uncertain.ts';
import { planByHand, type TiedByHand } from './plan-by-hand.ts';
import { yarnMassG } from './skeins.ts';

export interface UncertainNeed {
  /** What is cut from the ball. */
  readonly cutMm: Uncertain;
  /** What the knots, carries and tails take of it. */
  readonly usedMm: Uncertain;
  /** Mass of what is cut. */
  readonly massG: Uncertain;
}

export interface UncertainNeeds {
  readonly perYarn: Readonly<Record<YarnId, UncertainNeed & { readonly loose: TiedByHand }>>;
  /** All yarns together. */
  readonly total: UncertainNeed;
}

/** `plan` is the design's own with its pieces as they are cut, and `spread` is the design's. */
export function uncertainNeeds(design: Design, plan: PlainPlan, spread: GaugeSpread): UncertainNeeds {
  const used = design.yarns.filter(({ id }) => plan.perYarn[id]);
  const knots = used.map((yarn) => spreadOf(spread, (gauge) => knotMm(design, yarn, gauge)));
  const byHand = (end: 'low' | 'high') =>
    planByHand(plan, Object.fromEntries(used.map(({ id }, i) => [id, knots[i]![end] / knots[i]!.value])));
  const tight = byHand('low');
  const loose = byHand('high');
  const needOf = (yarn: Yarn) => {
    const { cutMm, usedMm } = plan.perYarn[yarn.id]!;
    const looser = loose[yarn.id]!;
    const cut = uncertain(cutMm, cutMm, Math.max(cutMm, looser.cutMm));
    return {
      cutMm: cut,
      usedMm: uncertain(usedMm, Math.min(usedMm, tight[yarn.id]!.usedMm), Math.max(usedMm, looser.usedMm)),
      massG: uncertain(yarnMassG(cut.value, yarn), yarnMassG(cut.low, yarn), yarnMassG(cut.high, yarn)),
      loose: looser,
    };
  };
  const perYarn = Object.fromEntries(used.map((yarn) => [yarn.id, needOf(yarn)]));
  const together = (what: keyof UncertainNeed) =>
    sumOfUncertain(Object.values(perYarn).map((need) => need[what]));
  return {
    perYarn,
    total: { cutMm: together('cutMm'), usedMm: together('usedMm'), massG: together('massG') },
  };
}
