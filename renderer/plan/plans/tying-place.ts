/** A place in the tying order: so many knots are tied. What the slider stands on, and where its keys take it. */
import type { PlanTables } from './plan-tables.ts';

export interface TyingPlace {
  /** Knots that are tied. */
  readonly knots: number;
  /** The stretch that is tied next or in part, from 0; the number of stretches where all is tied. */
  readonly stretch: number;
  /** Its row, from 0; the last row that is tied where all is done, 0 where nothing is ever tied. */
  readonly row: number;
  /** The column of the next knot, from 0; null where all is tied. */
  readonly column: number | null;
  /** Strands that are begun and not ended, the one in hand among them. */
  readonly live: number;
}

export function tyingPlace({ stretches }: PlanTables, knots: number): TyingPlace {
  const { count, row, from, to, knotsBefore, live } = stretches;
  const all = knotsBefore[count]!;
  if (knots >= all) return { knots: all, stretch: count, row: row[count - 1] ?? 0, column: null, live: 0 };
  const s = stretchOfKnot(knotsBefore, Math.max(0, knots));
  const done = Math.max(0, knots) - knotsBefore[s]!;
  const column = from[s]! + (to[s]! < from[s]! ? -done : done);
  // A strand that begins with this stretch hangs from its first knot on.
  const begun = done > 0 && stretches.before[s] === -1 ? 1 : 0;
  return { knots: Math.max(0, knots), stretch: s, row: row[s]!, column, live: live[s]! + begun };
}

export type TyingStep = 'next-run' | 'run-before' | 'next-row' | 'row-before';

/** Knots that are tied when the maker goes on, or back, by a run or a row. Joins don't end a run's stretch here. */
export function steppedKnots(tables: PlanTables, knots: number, step: TyingStep): number {
  const { stretches, rowStart } = tables;
  const { knotsBefore, count } = stretches;
  const { stretch, row } = tyingPlace(tables, knots);
  switch (step) {
    case 'next-run':
      return knotsBefore[Math.min(count, stretch + 1)]!;
    case 'run-before':
      return knots > knotsBefore[stretch]! ? knotsBefore[stretch]! : knotsBefore[Math.max(0, stretch - 1)]!;
    case 'next-row':
      return knotsBefore[stretch === count ? count : rowStart[row + 1]!]!;
    case 'row-before': {
      const here = knotsBefore[rowStart[row]!]!;
      if (knots > here) return here;
      const above = stretches.row[Math.max(0, rowStart[row]! - 1)] ?? 0;
      return knotsBefore[rowStart[above]!]!;
    }
  }
}

/** The stretch that the knot belongs to. */
function stretchOfKnot(knotsBefore: Uint32Array, knot: number): number {
  let low = 0;
  let high = knotsBefore.length - 1;
  // The knot is always in a stretch from `low` up to, but not including, `high`.
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (knotsBefore[middle]! <= knot) low = middle;
    else high = middle;
  }
  return low;
}
