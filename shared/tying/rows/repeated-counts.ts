/**
 * The counts of a row that is the same again and again, as short rows write them: '5×(3×A 2×B)'. Only where the row is a whole
 * number of repeats, three at least: that is always shorter than writing it out.
 */
import { leastPeriod } from '../../chart/least-period.ts';
import type { YarnId } from '../../design/codes.ts';

interface Count {
  /** Null where the cells are bare. */
  readonly yarn: YarnId | null;
  readonly count: number;
}

export interface RepeatedCounts {
  readonly times: number;
  /** In tying order: of one repeat. */
  readonly counts: readonly Count[];
}

const LEAST_TIMES = 3;

/** Null where the row is written out. `parts` in tying order. */
export function repeatedCounts(parts: readonly Count[]): RepeatedCounts | null {
  const cells = parts.flatMap(({ yarn, count }) => Array<Count['yarn']>(count).fill(yarn));
  const period = leastPeriod(cells);
  const times = cells.length / period;
  if (period === 1 || !Number.isInteger(times) || times < LEAST_TIMES) return null;
  return { times, counts: firstCells(parts, period) };
}

/** The counts of a row's first cells. */
function firstCells(parts: readonly Count[], cells: number): Count[] {
  let left = cells;
  return parts.flatMap(({ yarn, count }) => {
    const taken = Math.min(count, left);
    left -= taken;
    return taken > 0 ? [{ yarn, count: taken }] : [];
  });
}
