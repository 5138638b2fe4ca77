/**
 * A plan as a looser hand ties it: the same runs in the same order, carried where the plan carries, but with more yarn
 * in each knot. What the plan keeps free of each piece is used up first, so that pieces end where they were planned to.
 * In a strand where that is not enough, each piece is from there on used until it runs out, and a carry that no longer
 * fits begins a strand of its own. A plan fills its pieces to the brim beside the reserve, so this may take more than a
 * chart planned for that hand.
 */
import { codeOf, type YarnId } from '../design/codes.ts';
import type { Piece, PlainPlan, Stretch } from '../tying/plan.ts';
import { type Tenths, tenthsOf } from '../tying/tenths.ts';

/**
 * Pieces that each yarn takes where its knots take `knotMm` (by yarn) instead of what the plan was made with. With
 * the plan's own, these are the plan's own pieces.
 */
export function piecesIfLoose(
  plan: PlainPlan,
  knotMm: Readonly<Record<YarnId, number>>,
): Record<YarnId, number> {
  const tenths = tenthsOf(plan.settings);
  const pieces: Record<YarnId, number> = {};
  for (const strand of plan.strands) {
    const knot = 10 * (knotMm[strand.yarn] ?? tenths.knot[codeOf(strand.yarn)]! / 10);
    pieces[strand.yarn] = (pieces[strand.yarn] ?? 0) + piecesOfStrand(strand.pieces, knot, tenths);
  }
  return pieces;
}

/** Up to the first piece that runs out before it was planned to, they are the plan's own. */
function piecesOfStrand(planned: readonly Piece[], knot: number, tenths: Tenths): number {
  const most = tenths.roomInAll + noise;
  const reaching = planned.findIndex(({ knots, carriedMm }) => knots * knot + 10 * carriedMm > most);
  if (reaching === -1) return planned.length;
  return reaching + piecesOf(runsOf(planned.slice(reaching)), knot, tenths);
}

/** A run with the way to it from the run before, in cords and rows; no way where the strand begins. */
interface Run {
  knots: number;
  readonly way: { readonly cords: number; readonly rows: number } | null;
}

function runsOf(pieces: readonly Piece[]): Run[] {
  const runs: Run[] = [];
  let before: Stretch | null = null;
  for (const { stretches } of pieces) {
    for (const [i, stretch] of stretches.entries()) {
      const knots = 1 + Math.abs(stretch.to - stretch.from);
      // A piece after the first goes on within the run.
      if (before && i === 0) runs.at(-1)!.knots += knots;
      else {
        const way = before && {
          cords: Math.abs(stretch.from - before.to),
          rows: stretch.row - before.row,
        };
        runs.push({ knots, way });
      }
      before = stretch;
    }
  }
  return runs;
}

/** A piece that is full to the tenth must not seem over-full by the noise of sums. */
const noise = 1e-6;

function piecesOf(runs: readonly Run[], knot: number, { roomInAll: room, carry }: Tenths): number {
  // However short a piece is, it ties a knot: only then is a plan made at all.
  const inPiece = Math.max(1, Math.floor((room + noise) / knot));
  let pieces = 0;
  let left = 0;
  for (const { knots, way } of runs) {
    const carried = way ? carry(way.cords, way.rows) : Number.POSITIVE_INFINITY;
    left = carried + knot > left + noise ? 0 : left - carried;
    const rest = knots - Math.floor((left + noise) / knot);
    if (rest <= 0) left -= knots * knot;
    else {
      const fresh = Math.ceil(rest / inPiece);
      pieces += fresh;
      left = room - (rest - (fresh - 1) * inPiece) * knot;
    }
  }
  return pieces;
}
