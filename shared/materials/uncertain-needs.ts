/**
 * How sure the yarn need is. All knots of all yarns are tied by the same hand, so their errors add up: with K knots, a
 * hand that spends dL more yarn in each, dp on the way past a cord and dh past a row ties in
 *   K dL + slack x (cords carried x dp + rows carried x dh)
 * more, and each further piece's worth of that, which is its room, takes a further piece, tails and all: what is used
 * grows by x (room + 2 tails) / room, what is cut by x working length / room. What is left over of the pieces stays as
 * it is.
 *
 * These are lengths. The 95 % are held by what the yarn is used for, `usedMm`. What is cut comes in whole pieces, so a
 * plan made anew for that hand may take a piece or some more or fewer than `cutMm` leaves open, which counts where
 * pieces are few; `if-loose.ts` counts pieces.
 */
import type { YarnId } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import type { Yarn } from '../design/schema.ts';
import { type Gauge, knotMm } from '../gauge/gauge.ts';
import { type GaugeSpread, spreadOf } from '../gauge/gauge-spread.ts';
import type { PlainPlan, Stretch } from '../tying/plan.ts';
import { fromTenths, roomOf } from '../tying/tenths.ts';
import type { Uncertain } from '../units/uncertain.ts';
import { yarnMassG } from './skeins.ts';

export interface UncertainNeed {
  /** What is cut from the ball, as a length: that it is cut in whole pieces is left aside. */
  readonly cutMm: Uncertain;
  /** What the knots, carries and tails take of it. */
  readonly usedMm: Uncertain;
  /** Mass of what is cut. */
  readonly massG: Uncertain;
}

export interface UncertainNeeds {
  readonly perYarn: Readonly<Record<YarnId, UncertainNeed>>;
  /** All yarns together. */
  readonly total: UncertainNeed;
  /** Mass of all that is cut from a ball by a hand of that gauge. */
  readonly massGAt: (gauge: Gauge) => number;
}

/** `plan` is the design's own, and so is `spread`. */
export function uncertainNeeds(design: Design, plan: PlainPlan, spread: GaugeSpread): UncertainNeeds {
  const { slack, workingLengthMm, tailMm } = plan.settings;
  const roomMm = fromTenths(roomOf(plan.settings));
  const ways = waysOf(plan);
  const used = design.yarns.filter(({ id }) => plan.perYarn[id]);
  const tiedMoreMm = (yarn: Yarn, to: Gauge) => {
    const { gauge: from } = spread;
    const { knots } = plan.perYarn[yarn.id]!;
    const { cords, rows } = ways.get(yarn.id)!;
    return (
      knots * (knotMm(design, yarn, to) - knotMm(design, yarn, from)) +
      slack * (cords * (to.pitchMm - from.pitchMm) + rows * (to.rowHeightMm - from.rowHeightMm))
    );
  };
  const cutMmAt = (yarn: Yarn, at: Gauge) =>
    plan.perYarn[yarn.id]!.cutMm + (tiedMoreMm(yarn, at) * workingLengthMm) / roomMm;
  const usedMmAt = (yarn: Yarn, at: Gauge) =>
    plan.perYarn[yarn.id]!.usedMm + (tiedMoreMm(yarn, at) * (roomMm + 2 * tailMm)) / roomMm;
  const needOf = (yarns: readonly Yarn[]): UncertainNeed => {
    const spreadOver = (of: (yarn: Yarn, at: Gauge) => number) =>
      spreadOf(spread, (at) => yarns.reduce((sum, yarn) => sum + Math.max(0, of(yarn, at)), 0));
    return {
      cutMm: spreadOver(cutMmAt),
      usedMm: spreadOver(usedMmAt),
      massG: spreadOver((yarn, at) => yarnMassG(cutMmAt(yarn, at), yarn)),
    };
  };
  return {
    perYarn: Object.fromEntries(used.map((yarn) => [yarn.id, needOf([yarn])])),
    total: needOf(used),
    massGAt: (at) => used.reduce((sum, yarn) => sum + yarnMassG(Math.max(0, cutMmAt(yarn, at)), yarn), 0),
  };
}

/** How far each yarn is carried and turned, in cords and rows. */
function waysOf({ strands }: PlainPlan): Map<YarnId, { cords: number; rows: number }> {
  const ways = new Map<YarnId, { cords: number; rows: number }>();
  for (const { yarn, pieces } of strands) {
    const way = ways.get(yarn) ?? { cords: 0, rows: 0 };
    ways.set(yarn, way);
    for (const { stretches } of pieces) {
      let before: Stretch | null = null;
      for (const stretch of stretches) {
        if (before) {
          way.cords += Math.abs(stretch.from - before.to);
          way.rows += stretch.row - before.row;
        }
        before = stretch;
      }
    }
  }
  return ways;
}
