/**
 * A hanging on its dowel as it is: lark's heads in their true width, side by side. Where they are wider than the two columns
 * below them they spread along the dowel, and the cords fan in to row 1. For pictures of the finished hanging; where one draws,
 * heads stay over their columns, so that the dowel is near the chart.
 */
import type { Design } from '../../design/design.ts';
import { fringeMm } from '../../gauge/fringe.ts';
import { headsOf } from '../../gauge/heads.ts';
import { cordX, type HangingGeometry, hangingGeometry } from './geometry.ts';

export interface HungGeometry extends HangingGeometry {
  /** Where the cord of each column (from 0) comes out of its head, in mm. */
  readonly legX: readonly number[];
  /** Left and right end of all heads. */
  readonly headsX: readonly [left: number, right: number];
}

/** From the middle of a head to the middle of either leg, in cord thicknesses. */
export const LEG_IN_CORDS = 0.93;

/** From the dowel to the middle of a head's bar, in cord thicknesses. */
export const BAR_IN_CORDS = 0.55;

/**
 * What heads and legs take below the dowel, in cord thicknesses: row 1 is tied close under the heads, so that cords fan in
 * within a short way. Our own choice, as how far they do hangs on the maker.
 */
const DROP_IN_CORDS = { least: 2, most: 6 };

export function hungGeometry(
  design: Pick<Design, 'columns' | 'rows' | 'cord' | 'dowel' | 'fringe'>,
  gauge: { readonly pitchMm: number; readonly rowHeightMm: number },
): HungGeometry {
  const geometry = hangingGeometry(design, gauge, fringeMm(design.columns, design.fringe));
  const { headWidthMm, allMm, spread } = headsOf(design, gauge);
  const { columns, widthMm, cordMm, dowel, hanger, bounds } = geometry;
  const middles = spread
    ? geometry.heads.map((_, i) => (widthMm - allMm) / 2 + (i + 0.5) * headWidthMm)
    : overColumns(geometry, headWidthMm);
  const heads = geometry.heads.map((head, i) => ({ ...head, x: middles[i]!, width: headWidthMm }));
  const legX = Array.from({ length: columns }, (_, column) => {
    const side = column % 2 === 0 ? -1 : 1;
    return middles[Math.floor(column / 2)]! + side * LEG_IN_CORDS * cordMm;
  });
  const aside = legX.reduce((most, x, column) => Math.max(most, Math.abs(x - cordX(geometry, column))), 0);
  const drop = Math.min(Math.max(DROP_IN_CORDS.least * cordMm, aside / 2), DROP_IN_CORDS.most * cordMm);
  const lift = dowel.y + dowel.diameter + drop;
  const headsX = [middles[0]! - headWidthMm / 2, middles.at(-1)! + headWidthMm / 2] as const;
  return {
    ...geometry,
    heads,
    legX,
    headsX,
    dowel: { ...dowel, y: dowel.y - lift },
    hanger: { ...hanger, y: hanger.y - lift, topY: hanger.topY - lift },
    bounds: {
      ...bounds,
      left: Math.min(bounds.left, headsX[0]),
      right: Math.max(bounds.right, headsX[1]),
      top: bounds.top - lift,
    },
  };
}

/** Where the cord of a column (from 0) lies at a height of the hanging: on its way from its head to row 1, or straight below. */
export function cordXAt(geometry: HungGeometry, column: number, y: number): number {
  const end = cordX(geometry, column);
  if (y >= 0) return end;
  const start = legsY(geometry);
  return end + (geometry.legX[column]! - end) * Math.min(y / start, 1);
}

/** Where the legs come out from under the bars. */
export function legsY({ dowel, cordMm }: Pick<HangingGeometry, 'dowel' | 'cordMm'>): number {
  return dowel.y + dowel.diameter + BAR_IN_CORDS * cordMm;
}

/** A single last column has a whole head, which needs more room than the column. */
function overColumns({ heads }: HangingGeometry, headWidthMm: number): number[] {
  const middles: number[] = [];
  for (const { x } of heads)
    middles.push(Math.max(x, (middles.at(-1) ?? Number.NEGATIVE_INFINITY) + headWidthMm));
  return middles;
}
