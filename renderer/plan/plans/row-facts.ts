/** What each row takes, for the bars beside the chart and the list of the worst rows. */
import { rowTallies } from '../../../shared/tying/steps/row-tallies.ts';
import type { TyingOrder } from '../../../shared/tying/steps/tying-order.ts';

export interface RowFacts {
  /** From 1. */
  readonly row: number;
  /** Strands that hang on below the row, to be taken up further down. */
  readonly live: number;
  /** Times that another strand is taken into the hand within the row. */
  readonly changes: number;
  /** Pieces that begin in the row, attached or joined. */
  readonly pieces: number;
}

/** What rows are ranked by. */
export type RowMeasure = 'live' | 'changes' | 'pieces';

/** One for each row, row 1 first. */
export function rowFacts(order: TyingOrder): RowFacts[] {
  return rowTallies(order).map(({ row, liveAfter, attached, joined }, r) => {
    const runs = order.rows[r]!.length - joined;
    return { row, live: liveAfter, changes: Math.max(0, runs - 1), pieces: attached + joined };
  });
}

/** As many as can be read at a glance. */
const most = 12;

/** The rows that take the most by one measure, then by the others; rows that take nothing of it are left out. */
export function worstRows(facts: readonly RowFacts[], by: RowMeasure): RowFacts[] {
  const measures = [by, 'live', 'changes', 'pieces'] as const;
  const worse = (a: RowFacts, b: RowFacts) => {
    const decides = measures.find((each) => a[each] !== b[each]);
    return decides ? b[decides] - a[decides] : a.row - b.row;
  };
  return facts
    .filter((row) => row[by] > 0)
    .sort(worse)
    .slice(0, most);
}
