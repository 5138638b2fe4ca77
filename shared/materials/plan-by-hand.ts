/**
 * A plan as another hand ties it: the same runs in the same order, carried where the plan carries, but with more or
 * less yarn in each knot and on each way. A tighter hand leaves more over of the same pieces. A looser one uses up first
 * what the plan keeps free of each piece, so that pieces end where they were planned to. Where that is not enough:
 * - of pieces that are all cut at the working length, each is from there on used until it runs out; a carry that no
 *   longer fits begins a strand of its own, and the last piece of the strand is cut only as long as it is needed;
 * - a piece that was cut to measure is joined by another, cut as long as it is needed, and the next begins where it was
 *   planned to, for it was cut for what it ties.
 * A plan fills its pieces to the brim beside the reserve, so this takes more pieces, though short ones, than a chart
 * planned for that hand.
 */
import { codeOf, type YarnId } from '../design/codes.ts';
import type { Piece, PlainPlan, Stretch } from '../tying/plan.ts';
import { fromTenths, type Tenths, tenthsOf, toTenths } from '../tying/tenths.ts';

/** What a yarn takes by that hand. */
export interface TiedByHand {
  readonly pieces: number;
  /** Knots, carries, turns and tails. */
  readonly usedMm: number;
  /** The plan's pieces as they are cut, and those that a looser hand takes beside them. */
  readonly cutMm: number;
}

/**
 * `times`: how much yarn that hand spends in a knot of each yarn, and on its ways, against what the plan reckons with;
 * 1 where it says nothing. With 1 it is the plan itself. `plan`: with its pieces as they are cut (`plan-as-cut.ts`).
 */
export function planByHand(
  plan: PlainPlan,
  times: Readonly<Record<YarnId, number>>,
): Record<YarnId, TiedByHand> {
  const tenths = tenthsOf(plan.settings);
  const all = new Map<YarnId, Sum>();
  for (const { yarn, pieces } of plan.strands) {
    const sum = all.get(yarn) ?? { pieces: 0, used: 0, cut: 0 };
    all.set(yarn, sum);
    const of = { times: times[yarn] ?? 1, knot: tenths.knot[codeOf(yarn)]! * (times[yarn] ?? 1), tenths };
    const isFitted = pieces.some(({ cutMm }) => toTenths(cutMm) < tenths.cut);
    if (isFitted) for (const piece of pieces) add(sum, fittedPiece(piece, of));
    else add(sum, wholeStrand(pieces, of));
  }
  return Object.fromEntries(
    [...all].map(([yarn, { pieces, used, cut }]) => [
      yarn,
      { pieces, usedMm: fromTenths(used), cutMm: fromTenths(cut) },
    ]),
  );
}

/** Lengths in tenths of a mm. */
interface Sum {
  pieces: number;
  used: number;
  cut: number;
}

interface Hand {
  readonly times: number;
  /** One knot of the yarn by that hand. */
  readonly knot: number;
  readonly tenths: Tenths;
}

/** A piece that is full to the tenth must not seem over-full by the noise of sums. */
const noise = 1e-6;

function add(sum: Sum, more: Sum): void {
  sum.pieces += more.pieces;
  sum.used += more.used;
  sum.cut += more.cut;
}

/** Knots, carries and turns of a piece by that hand. */
function worked({ knottedMm, carriedMm }: Piece, times: number): number {
  return (toTenths(knottedMm) + toTenths(carriedMm)) * times;
}

function asPlanned(pieces: readonly Piece[], { times, tenths }: Hand): Sum {
  const sum: Sum = { pieces: pieces.length, used: 0, cut: 0 };
  for (const piece of pieces) {
    sum.used += worked(piece, times) + 2 * tenths.tail;
    sum.cut += toTenths(piece.cutMm);
  }
  return sum;
}

function fittedPiece(piece: Piece, hand: Hand): Sum {
  const sum = asPlanned([piece], hand);
  const { knot, tenths } = hand;
  const work = worked(piece, hand.times);
  const room = toTenths(piece.cutMm) - 2 * tenths.tail + noise;
  if (work <= room) return sum;
  const rest = work - Math.floor(room / knot) * knot;
  const more = Math.ceil((rest - noise) / (knotsIn(tenths.roomInAll, knot) * knot));
  const tails = 2 * tenths.tail * more;
  return { pieces: 1 + more, used: sum.used + tails, cut: sum.cut + rest + tails };
}

/** However short a piece is, it ties a knot: only then is a plan made at all. */
function knotsIn(room: number, knot: number): number {
  return Math.max(1, Math.floor((room + noise) / knot));
}

function wholeStrand(planned: readonly Piece[], hand: Hand): Sum {
  const most = hand.tenths.roomInAll + noise;
  const reaching = planned.findIndex((piece) => worked(piece, hand.times) > most);
  if (reaching === -1) return asPlanned(planned, hand);
  const sum = asPlanned(planned.slice(0, reaching), hand);
  const rest = planned.slice(reaching);
  const { pieces, used, last } = usedUp(runsOf(rest), hand);
  const cut = (pieces - 1) * hand.tenths.cut + last;
  add(sum, { pieces, used, cut: Math.max(cut, asPlanned(rest, hand).cut) });
  return sum;
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

/** Pieces of the working length, each used until it runs out; `last`: what the last of them is used for, tails too. */
function usedUp(
  runs: readonly Run[],
  { times, knot, tenths: { roomInAll: room, carry, tail } }: Hand,
): { readonly pieces: number; readonly used: number; readonly last: number } {
  const inPiece = knotsIn(room, knot);
  let pieces = 0;
  let work = 0;
  let left = 0;
  for (const { knots, way } of runs) {
    const carried = way ? carry(way.cords, way.rows) * times : Number.POSITIVE_INFINITY;
    const reaches = carried + knot <= left + noise;
    left = reaches ? left - carried : 0;
    work += knots * knot + (reaches ? carried : 0);
    const rest = knots - Math.floor((left + noise) / knot);
    if (rest <= 0) left -= knots * knot;
    else {
      const fresh = Math.ceil(rest / inPiece);
      pieces += fresh;
      left = room - (rest - (fresh - 1) * inPiece) * knot;
    }
  }
  return { pieces, used: work + 2 * tail * pieces, last: room - left + 2 * tail };
}
