import { goesRight } from '../../../shared/chart/chart.ts';
import { counted } from '../../../shared/units/counted.ts';
import type { PlanTables } from '../plans/plan-tables.ts';
import type { TyingPlace } from '../plans/tying-place.ts';

/** 'Row 12, right to left · 330 of 1,080 knots · 4 strands in use'. `all`: the knots of the hanging. */
export function placeWords(
  { startCorner }: PlanTables,
  { row, knots, live, column }: TyingPlace,
  all: number,
): string {
  const done = `${knots.toLocaleString('en')} of ${counted(all, 'knot')}`;
  if (column === null) return `All tied: ${done}`;
  const way = goesRight(startCorner, row) ? 'left to right' : 'right to left';
  return `Row ${row + 1}, ${way} · ${done} · ${counted(live, 'strand')} in use`;
}
