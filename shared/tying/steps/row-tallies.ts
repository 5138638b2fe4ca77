/** What each row takes: for the worst rows, and for how far the work has come. */
import type { TyingOrder } from './tying-order.ts';

export interface RowTally {
  /** From 1. */
  readonly row: number;
  readonly knots: number;
  /** Pieces attached, and pieces joined. */
  readonly attached: number;
  readonly joined: number;
  /** Tails that the row adds. */
  readonly looseEnds: number;
  /** Carries and turns that arrive in the row. */
  readonly carries: number;
  readonly turns: number;
  /** Strands that hang on when the row is done, to be taken up further down. */
  readonly liveAfter: number;
}

/** One for each row, row 1 first. */
export function rowTallies({ rows, knotsBefore }: TyingOrder): RowTally[] {
  let liveAfter = 0;
  return rows.map((stretches, r) => {
    const counts = { attach: 0, join: 0, carry: 0, turn: 0 };
    let ended = 0;
    for (const { arrival, stretch, before, after } of stretches) {
      counts[arrival]++;
      if (before && before.stretch.row < stretch.row) liveAfter--;
      if (after === null) ended++;
      else if (after.stretch.row > stretch.row) liveAfter++;
    }
    return {
      row: r + 1,
      knots: knotsBefore[r + 1]! - knotsBefore[r]!,
      attached: counts.attach,
      joined: counts.join,
      looseEnds: counts.attach + 2 * counts.join + ended,
      carries: counts.carry,
      turns: counts.turn,
      liveAfter,
    };
  });
}
