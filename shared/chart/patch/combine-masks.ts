/** Masks made of masks of the same chart. */
import { type Mask, maskOf } from './mask.ts';

/** What either has chosen: a patch with more added to it. */
export function joinMasks(a: Mask, b: Mask): Mask {
  return combined(a, b, (inA, inB) => inA | inB);
}

/** What `a` has chosen and `b` has not: a patch with a part taken away. */
export function cutMasks(a: Mask, b: Mask): Mask {
  return combined(a, b, (inA, inB) => inA & (1 - inB));
}

/** All that was not chosen. */
export function invertMask(mask: Mask): Mask {
  return maskOf(
    mask.chosen.map((each) => 1 - each),
    mask,
  );
}

/** The same cells so many columns and rows further on; what leaves the chart is no longer chosen. */
export function movedMask(mask: Mask, columnsBy: number, rowsBy: number): Mask {
  const { columns, rows, chosen, bounds } = mask;
  const moved = new Uint8Array(chosen.length);
  if (bounds) {
    for (let row = bounds.top; row <= bounds.bottom; row++) {
      if (row + rowsBy < 0 || row + rowsBy >= rows) continue;
      for (let column = bounds.left; column <= bounds.right; column++) {
        if (column + columnsBy < 0 || column + columnsBy >= columns) continue;
        moved[(row + rowsBy) * columns + column + columnsBy] = chosen[row * columns + column]!;
      }
    }
  }
  return maskOf(moved, mask);
}

function combined(a: Mask, b: Mask, choose: (inA: number, inB: number) => number): Mask {
  if (a.columns !== b.columns || a.rows !== b.rows) throw new Error('masks of two charts');
  return maskOf(
    a.chosen.map((inA, i) => choose(inA, b.chosen[i]!)),
    a,
  );
}
