/**
 * Which pieces to cut before the work begins: all of one yarn and one length together, numbered within their yarn in
 * the order in which they are attached. The lengths are the plan's own, so they are fitted where it is
 * (`fitted-plan.ts`), else the working length.
 */
import type { YarnId } from '../../design/codes.ts';
import type { PlacedStretch, TyingOrder } from '../../tying/steps/tying-order.ts';
import { fromTenths, toTenths } from '../../tying/tenths.ts';

export interface BundlePiece {
  /** Among the pieces of its yarn, in the order in which they are attached, from 1: as in the steps. */
  readonly number: number;
  /** Where it is attached, both from 1. */
  readonly row: number;
  readonly cord: number;
  readonly knots: number;
  /** What is tied and carried of it, with both tails: it is cut at least so long. */
  readonly usedMm: number;
}

/** Pieces of one yarn and one length. */
export interface Bundle {
  readonly yarn: YarnId;
  readonly cutMm: number;
  readonly totalMm: number;
  /** In the order of use; the first one's row is where the bundle comes in. */
  readonly pieces: readonly BundlePiece[];
}

export interface Bundles {
  /** By yarn in the design's order, the longest pieces of each first: what is cut too short serves as a shorter one. */
  readonly bundles: readonly Bundle[];
  readonly pieces: number;
  readonly totalMm: number;
  /** What fitting saves against cutting every piece at the working length; 0 where nothing is fitted. */
  readonly savedMm: number;
}

export function bundlesOf({ plan, rows }: TyingOrder): Bundles {
  const byYarn = new Map<YarnId, Map<number, BundlePiece[]>>(
    (Object.keys(plan.perYarn) as YarnId[]).map((yarn) => [yarn, new Map()]),
  );
  for (const placed of rows.flat()) {
    if (placed.arrival !== 'attach' && placed.arrival !== 'join') continue;
    const byLength = byYarn.get(placed.yarn)!;
    const cut = toTenths(placed.piece.cutMm);
    const alike = byLength.get(cut) ?? [];
    byLength.set(cut, alike);
    alike.push(pieceOf(placed));
  }
  const bundles = [...byYarn].flatMap(([yarn, byLength]) =>
    [...byLength]
      .sort(([a], [b]) => b - a)
      .map(([cut, pieces]) => ({
        yarn,
        cutMm: fromTenths(cut),
        totalMm: fromTenths(cut * pieces.length),
        pieces,
      })),
  );
  const total = bundles.reduce((sum, { totalMm }) => sum + toTenths(totalMm), 0);
  const { pieces } = plan.totals;
  return {
    bundles,
    pieces,
    totalMm: fromTenths(total),
    savedMm: fromTenths(toTenths(plan.settings.workingLengthMm) * pieces - total),
  };
}

function pieceOf({ pieceNumber, stretch, piece }: PlacedStretch): BundlePiece {
  return {
    number: pieceNumber,
    row: stretch.row,
    cord: stretch.from,
    knots: piece.knots,
    usedMm: piece.usedMm,
  };
}
