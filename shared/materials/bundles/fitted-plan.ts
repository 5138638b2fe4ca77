/**
 * A plan whose pieces are cut to measure: a piece that ties 23 knots need not be an arm span long. What is tied and
 * carried stays as it was; only the cut lengths, and what is left over of them, change. So materials, bundles and
 * labels made from this plan agree.
 */

import type { Piece, PlainPlan, YarnTally } from '../../tying/plan.ts';
import { fromTenths, toTenths } from '../../tying/tenths.ts';

export interface Fitting {
  /** Cut lengths are rounded up to a multiple of this, so that many pieces are cut alike. At least 0.1. */
  readonly roundUpMm: number;
  /**
   * Yarn kept in hand against loose tension and slips, as a share of what is knotted and carried: 0.1 is 10 %. A piece
   * that would come within a step of the working length with it, or beyond, is cut at the working length, as it was
   * planned: two lengths so nearly alike would only be mixed up.
   */
  readonly reserve: number;
}

/** Values from memory: a mark on a tape every 5 cm, and as much reserve as the yarn's own margin. */
export const usualFitting: Fitting = { roundUpMm: 50, reserve: 0.1 };

/** Fitted again, a plan stays as it is: what is tied says how long a piece must be, not how it was cut before. */
export function fittedPlan<P extends PlainPlan>(plan: P, fitting: Fitting): P {
  const strands = plan.strands.map(({ yarn, pieces }) => ({
    yarn,
    pieces: pieces.map((piece) => fittedPiece(piece, plan, fitting)),
  }));
  const cut = new Map<string, number>();
  for (const { yarn, pieces } of strands) {
    const sum = pieces.reduce((tenths, { cutMm }) => tenths + toTenths(cutMm), 0);
    cut.set(yarn, (cut.get(yarn) ?? 0) + sum);
  }
  const perYarn = Object.fromEntries(
    Object.entries(plan.perYarn).map(([yarn, tally]) => [yarn, fittedTally(tally, cut.get(yarn)!)]),
  );
  const whole = [...cut.values()].reduce((sum, tenths) => sum + tenths, 0);
  return { ...plan, strands, perYarn, totals: { ...plan.totals, cutMm: fromTenths(whole) } };
}

function fittedPiece(piece: Piece, { settings }: PlainPlan, { roundUpMm, reserve }: Fitting): Piece {
  const used = toTenths(piece.usedMm);
  const worked = toTenths(piece.knottedMm) + toTenths(piece.carriedMm);
  const step = Math.max(1, toTenths(roundUpMm));
  const need = used + Math.ceil(worked * reserve - noise);
  const stepped = Math.ceil(need / step) * step;
  const longest = toTenths(settings.workingLengthMm);
  const cut = stepped + step > longest ? longest : stepped;
  return { ...piece, cutMm: fromTenths(cut), leftOverMm: fromTenths(cut - used) };
}

function fittedTally(tally: YarnTally, cut: number): YarnTally {
  return { ...tally, cutMm: fromTenths(cut), leftOverMm: fromTenths(cut - toTenths(tally.usedMm)) };
}

/** Keeps a product such as 0.1 x 30 from adding a tenth, and so perhaps a whole step. */
const noise = 1e-6;
