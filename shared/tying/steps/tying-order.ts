/**
 * The stretches of a plan in the order in which they are tied, each linked to its neighbours on the strand. Steps,
 * bundles and the tallies of the rows are read from it; it is built once for a chart and its plan.
 */
import { type Chart, goesRight } from '../../chart/chart.ts';
import type { YarnId } from '../../design/codes.ts';
import type { Piece, Plan, Strand, Stretch } from '../plan.ts';

/** A stretch in its place. */
export interface PlacedStretch {
  readonly stretch: Stretch;
  readonly yarn: YarnId;
  /** Index in the plan's strands, from 0. */
  readonly strand: number;
  readonly piece: Piece;
  /** The piece's number among those of its yarn, in the order in which they are attached, from 1. */
  readonly pieceNumber: number;
  /** Its place among all stretches, from 0. */
  readonly at: number;
  /** How the strand gets here. */
  readonly arrival: 'attach' | 'join' | 'carry' | 'turn';
  /** Its neighbours on the strand; null where the strand begins or ends. */
  readonly before: PlacedStretch | null;
  readonly after: PlacedStretch | null;
}

export interface TyingOrder {
  readonly chart: Chart;
  readonly plan: Plan;
  /** Row 1 first; a bare row has none. */
  readonly rows: readonly (readonly PlacedStretch[])[];
  /** Knots that are tied before each row, and at the end all of them: one more than there are rows. */
  readonly knotsBefore: Uint32Array;
}

/** `plan` is a sound plan of this chart. */
export function tyingOrder(chart: Chart, plan: Plan): TyingOrder {
  const sameSize = plan.columns === chart.columns && plan.rows === chart.rows;
  if (!sameSize || plan.startCorner !== chart.startCorner) throw new Error('the plan is of another chart');
  const rows: Placing[][] = Array.from({ length: chart.rows }, () => []);
  plan.strands.forEach((strand, s) => {
    for (const placing of placingsOf(strand, s)) rows[placing.stretch.row - 1]!.push(placing);
  });
  const knotsBefore = new Uint32Array(chart.rows + 1);
  rows.forEach((row, r) => {
    const way = goesRight(chart.startCorner, r) ? 1 : -1;
    row.sort((a, b) => way * (a.stretch.from - b.stretch.from));
    knotsBefore[r + 1] = row.reduce((sum, { stretch }) => sum + knotsIn(stretch), knotsBefore[r]!);
  });
  number(rows);
  return { chart, plan, rows, knotsBefore };
}

export function knotsIn({ from, to }: Stretch): number {
  return Math.abs(to - from) + 1;
}

/** While it is built. */
type Placing = {
  -readonly [K in keyof PlacedStretch]: K extends 'before' | 'after' ? Placing | null : PlacedStretch[K];
};

function placingsOf({ yarn, pieces }: Strand, strand: number): Placing[] {
  const placings: Placing[] = [];
  for (const piece of pieces) {
    piece.stretches.forEach((stretch, i) => {
      const before = placings.at(-1) ?? null;
      const arrival = before === null ? 'attach' : i === 0 ? 'join' : linkBetween(before.stretch, stretch);
      const placing: Placing = {
        stretch,
        yarn,
        strand,
        piece,
        pieceNumber: 0,
        at: 0,
        arrival,
        before,
        after: null,
      };
      if (before) before.after = placing;
      placings.push(placing);
    });
  }
  return placings;
}

/** Straight down to the next row is the turn; everything else is a carry. */
function linkBetween(from: Stretch, to: Stretch): 'carry' | 'turn' {
  return from.to === to.from && to.row === from.row + 1 ? 'turn' : 'carry';
}

/** In tying order a piece's first stretch comes before its others, so each finds its number on the one before. */
function number(rows: readonly Placing[][]): void {
  const attached = new Map<YarnId, number>();
  let at = 0;
  for (const placing of rows.flat()) {
    placing.at = at++;
    if (placing.arrival === 'attach' || placing.arrival === 'join') {
      placing.pieceNumber = (attached.get(placing.yarn) ?? 0) + 1;
      attached.set(placing.yarn, placing.pieceNumber);
    } else placing.pieceNumber = placing.before!.pieceNumber;
  }
}
