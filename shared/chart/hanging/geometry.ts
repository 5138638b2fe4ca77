/**
 * Where the parts of a finished hanging lie, in mm, as seen from the front. The origin is the top left corner of
 * row 1, cord 1: x grows to the right, y downwards, so the dowel lies above zero. The Draw screen places dowel, heads,
 * cords and fringe by this; pictures of the finished hanging by what `hung-geometry.ts` makes of it.
 */
import type { Design } from '../../design/design.ts';
import { dowelOf } from '../../gauge/dowel.ts';

export interface HangingGeometry {
  readonly columns: number;
  readonly rows: number;
  readonly pitchMm: number;
  readonly rowHeightMm: number;
  /** Of the knotted picture. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cordMm: number;
  readonly dowel: {
    readonly x: number;
    readonly y: number;
    readonly length: number;
    readonly diameter: number;
  };
  /** One for each cut cord: the columns (from 0) that its two legs become. A single last column has one leg. */
  readonly heads: readonly {
    readonly x: number;
    readonly width: number;
    readonly left: number;
    readonly right: number;
  }[];
  /** Where the fringe of each column (from 0) ends. */
  readonly cordEndsMm: readonly number[];
  /** The cord that it hangs from: tied to the dowel at `fromX` and `toX`, highest at `topY` in the middle. */
  readonly hanger: {
    readonly fromX: number;
    readonly toX: number;
    readonly y: number;
    readonly topY: number;
  };
  /** Everything lies inside. */
  readonly bounds: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  };
}

/** `fringeMm` is the fringe below the last row, one length a column (see `gauge/fringe.ts`). */
export function hangingGeometry(
  { columns, rows, cord, dowel }: Pick<Design, 'columns' | 'rows' | 'cord' | 'dowel'>,
  { pitchMm, rowHeightMm }: { readonly pitchMm: number; readonly rowHeightMm: number },
  fringeMm: ArrayLike<number>,
): HangingGeometry {
  const widthMm = columns * pitchMm;
  const heightMm = rows * rowHeightMm;
  const cordMm = cord.diameterMm;
  // The head's bar and its legs take about two cord thicknesses below the dowel.
  const dowelY = -(2 * cordMm + dowel.diameterMm);
  const length = dowelOf({ columns, cord, dowel }, { pitchMm }).minLengthMm;
  const dowelX = (widthMm - length) / 2;
  const inset = Math.min(dowel.overhangMm / 2, length / 4);
  const rise = Math.min(length * 0.09, 160) + dowel.diameterMm;
  const cordEndsMm = Array.from({ length: columns }, (_, c) => heightMm + (fringeMm[c] ?? 0));
  return {
    columns,
    rows,
    pitchMm,
    rowHeightMm,
    widthMm,
    heightMm,
    cordMm,
    dowel: { x: dowelX, y: dowelY, length, diameter: dowel.diameterMm },
    heads: headsOf(columns, pitchMm, cordMm),
    cordEndsMm,
    hanger: { fromX: dowelX + inset, toX: dowelX + length - inset, y: dowelY, topY: dowelY - rise },
    bounds: {
      left: Math.min(dowelX, 0),
      top: dowelY - rise - cordMm,
      right: Math.max(dowelX + length, widthMm),
      bottom: cordEndsMm.reduce((a, b) => Math.max(a, b), heightMm),
    },
  };
}

/** The middle of column `column` (from 0). */
export function cordX({ pitchMm }: Pick<HangingGeometry, 'pitchMm'>, column: number): number {
  return (column + 0.5) * pitchMm;
}

function headsOf(columns: number, pitchMm: number, cordMm: number): HangingGeometry['heads'] {
  return Array.from({ length: Math.ceil(columns / 2) }, (_, i) => {
    const left = 2 * i;
    const right = Math.min(left + 1, columns - 1);
    return {
      x: ((left + right + 1) / 2) * pitchMm,
      // As wide as the knot is, but no wider than its own two columns, over which it stays.
      width: Math.min(4 * cordMm, 1.9 * pitchMm),
      left,
      right,
    };
  });
}
