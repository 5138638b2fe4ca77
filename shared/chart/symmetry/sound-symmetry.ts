/**
 * The nearest symmetry that brings every cell to a cell, and images to images:
 *
 * - the centre is a whole number of half cells, not outside the chart; where cords change places with rows, both of
 *   its numbers are even or both odd, else a cell would fall between cells;
 * - periods are whole, at least 1, and no longer than the chart, beyond which nothing repeats;
 * - half drop needs an even number of rows, so that its half is whole;
 * - where cords change places with rows the lattice must be square: translation with equal periods, half drop with
 *   rows twice the columns.
 */
import type { ChartSize } from '../tools/cell.ts';
import { swapsCordsAndRows } from './kinds.ts';
import type { Centre, Symmetry } from './symmetry.ts';

export function soundSymmetry(symmetry: Symmetry, size: ChartSize): Symmetry {
  return { ...symmetry, centre: soundCentre(symmetry, size), ...soundPeriods(symmetry, size) };
}

/** The middle of the chart. */
export function centreOf({ columns, rows }: ChartSize): Centre {
  return { acrossHalves: columns, downHalves: rows };
}

/** The nearest centre that the symmetry's kind allows; where two are as near, the one nearer to the chart's middle. */
export function soundCentre({ point, centre }: Symmetry, { columns, rows }: ChartSize): Centre {
  const acrossHalves = whole(centre.acrossHalves, 0, 2 * columns);
  const downHalves = whole(centre.downHalves, 0, 2 * rows);
  if (!swapsCordsAndRows(point) || (acrossHalves - downHalves) % 2 === 0) return { acrossHalves, downHalves };
  return { acrossHalves: acrossHalves + (acrossHalves < columns ? 1 : -1), downHalves };
}

/** The nearest periods that the symmetry's kinds allow, in cells. `periodColumns` is kept where rows must follow it. */
export function soundPeriods(
  { point, repeat, ...periods }: Symmetry,
  { columns, rows }: ChartSize,
): { periodColumns: number; periodRows: number } {
  if (swapsCordsAndRows(point)) {
    const periodColumns = whole(periods.periodColumns, 1, Math.max(columns, rows));
    return { periodColumns, periodRows: repeat === 'half-drop' ? 2 * periodColumns : periodColumns };
  }
  const periodColumns = whole(periods.periodColumns, 1, columns);
  const periodRows = whole(periods.periodRows, 1, rows);
  return { periodColumns, periodRows: repeat === 'half-drop' ? periodRows + (periodRows % 2) : periodRows };
}

/** The nearest whole number from `least` to `most`; `least` where it is not a number at all. */
function whole(value: number, least: number, most: number): number {
  return Number.isNaN(value) ? least : Math.min(most, Math.max(least, Math.round(value)));
}
