/**
 * The colours of many cells as few points, each with the number of cells that have it: what yarns are chosen from.
 * Where the cells have few colours each is a point of its own, exactly; else near ones are put together, as finely as
 * the cap on points lets. Points come in the order of their colours, so the order of the cells makes no difference.
 */
import { type CellColours, STEP_BITS, type Steps } from './cell-colours.ts';

export interface ColourPoint extends Steps {
  /** Cells of this colour. */
  readonly cells: number;
}

/** As many points as yarns are chosen from in about a tenth of a second. */
const MOST_POINTS = 20_000;

/** How finely colours are told apart, in bits of OKLab's unit. At 6 bits all that a screen shows are about 17,000. */
const fineness = [16, 9, 8, 7, 6] as const;

export function colourTally(cells: CellColours): ColourPoint[] {
  for (const bits of fineness) {
    const bins = binned(cells, bits);
    if (bins) return pointsOf(bins);
  }
  throw new Error(`the colours of the cells don't fit into ${MOST_POINTS} points`);
}

interface Bin {
  cells: number;
  l: number;
  a: number;
  b: number;
}

function binned(cells: CellColours, bits: number): Map<number, Bin> | null {
  const shift = STEP_BITS - bits;
  // `a` and `b` lie within half a unit of 0; moved by one they are positive, and a key of 17 + 18 + 18 bits is exact.
  const zero = 2 ** STEP_BITS;
  const bins = new Map<number, Bin>();
  for (let i = 0; i < cells.length; i += 3) {
    const l = cells[i]!;
    const a = cells[i + 1]!;
    const b = cells[i + 2]!;
    const key = ((l >> shift) * 2 ** 18 + ((a + zero) >> shift)) * 2 ** 18 + ((b + zero) >> shift);
    const bin = bins.get(key);
    if (bin) {
      bin.cells++;
      bin.l += l;
      bin.a += a;
      bin.b += b;
    } else {
      if (bins.size === MOST_POINTS) return null;
      bins.set(key, { cells: 1, l, a, b });
    }
  }
  return bins;
}

function pointsOf(bins: Map<number, Bin>): ColourPoint[] {
  return [...bins]
    .sort(([keyA], [keyB]) => keyA - keyB)
    .map(([, { cells, l, a, b }]) => ({ cells, l: l / cells, a: a / cells, b: b / cells }));
}
