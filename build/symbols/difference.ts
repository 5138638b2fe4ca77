/**
 * How different two symbols look in one-bit print. Both are blurred a little, as ink and eye do, and laid over one
 * another; what remains is counted in whole pixels of ink. One may be shifted against the other: by a pixel for
 * nothing, since no printer places a cell exactly, further for a price, so that the same drawing at another place
 * in the cell still counts as alike.
 */
/** Shares of ink, 0 to 1, row by row: whole in one-bit print, in between in grey. */
export interface Inked {
  readonly size: number;
  readonly ink: ArrayLike<number>;
}

/** A bitmap made ready for comparing: blurred, in sixteenths of a pixel's ink, with room around it for shifts. */
export interface Print {
  readonly size: number;
  readonly blurred: Float32Array;
  /** Pixels of ink before the blur. */
  readonly inkPx: number;
}

export interface Shifts {
  /** Shifts up to this many pixels cost nothing. */
  freePx: number;
  /** Shifts up to this many pixels are tried. */
  maxPx: number;
  /** Pixels of ink that each further pixel of shift counts as. */
  pricePerPx: number;
}

/** Blank pixels around a print: no shift may be larger than this less the blur. */
const PAD = 4;

export function print({ size, ink }: Inked): Print {
  const side = size + 2 * PAD;
  const blurred = new Float32Array(side * side);
  let inkPx = 0;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const share = ink[y * size + x]!;
      if (share === 0) continue;
      inkPx += share;
      for (let dy = -1; dy <= 1; dy++) {
        for (let dx = -1; dx <= 1; dx++) {
          blurred[(y + PAD + dy) * side + x + PAD + dx]! += share * (2 - Math.abs(dx)) * (2 - Math.abs(dy));
        }
      }
    }
  }
  return { size, blurred, inkPx };
}

/** Pixels of ink by which the two differ where they are laid over one another as well as the shifts allow. */
export function differencePx(a: Print, b: Print, { freePx, maxPx, pricePerPx }: Shifts): number {
  let best = Number.POSITIVE_INFINITY;
  for (let dy = -maxPx; dy <= maxPx; dy++) {
    for (let dx = -maxPx; dx <= maxPx; dx++) {
      const price = pricePerPx * Math.max(0, Math.max(Math.abs(dx), Math.abs(dy)) - freePx);
      if (price < best) best = Math.min(best, price + remainder(a, b, dx, dy, (best - price) * 16) / 16);
    }
  }
  return best;
}

/** The difference as a share of the ink of both: 1 where they have nothing in common, 0 where they are the same. */
export function differenceShare(a: Print, b: Print, shifts: Shifts): number {
  return differencePx(a, b, shifts) / (a.inkPx + b.inkPx);
}

/** Sixteenths of a pixel left over at one shift; gives up once above `enough`. */
function remainder(a: Print, b: Print, dx: number, dy: number, enough: number): number {
  const side = a.size + 2 * PAD;
  const edge = PAD - 1;
  let sum = 0;
  for (let y = 1; y < side - 1; y++) {
    const fromY = y + dy;
    if (fromY < 0 || fromY >= side) continue;
    for (let x = 1; x < side - 1; x++) {
      const fromX = x + dx;
      if (fromX < 0 || fromX >= side) continue;
      sum += Math.abs(a.blurred[y * side + x]! - b.blurred[fromY * side + fromX]!);
    }
    if (y > edge && sum >= enough) return sum;
  }
  return sum;
}
