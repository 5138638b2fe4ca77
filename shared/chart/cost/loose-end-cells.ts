import type { PlainPlan } from '../../tying/plan.ts';

/**
 * How many loose ends hang at each cell of the chart: 1 where a piece begins or ends, 2 where it does both because it
 * ties this one knot, 0 elsewhere. All together they are the plan's loose ends.
 */
export function looseEndCells(plan: PlainPlan): Uint8Array {
  const ends = new Uint8Array(plan.columns * plan.rows);
  const mark = (row: number, cord: number) => {
    ends[(row - 1) * plan.columns + (cord - 1)]! += 1;
  };
  for (const { pieces } of plan.strands) {
    for (const { stretches } of pieces) {
      const first = stretches[0]!;
      const last = stretches.at(-1)!;
      mark(first.row, first.from);
      mark(last.row, last.to);
    }
  }
  return ends;
}
