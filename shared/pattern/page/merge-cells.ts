/**
 * Cells of one code as few rectangles: each row's runs, and equal runs below one another as one. A chart of flat areas
 * comes down to a few hundred rectangles, and no drawer needs one for each cell.
 */

/** For each code its rectangles as `column, row, columns, rows` again and again, from 0. */
export function mergeCells(codes: Uint8Array, columns: number, rows: number): Map<number, number[]> {
  const merged = new Map<number, number[]>();
  /** By column: where in its code's list the rectangle lies that a run starting here may lengthen, else -1. */
  let above = new Int32Array(columns).fill(-1);
  for (let r = 0; r < rows; r++) {
    const here = new Int32Array(columns).fill(-1);
    for (let c = 0; c < columns; ) {
      const code = codes[r * columns + c]!;
      let end = c + 1;
      while (end < columns && codes[r * columns + end] === code) end++;
      let list = merged.get(code);
      if (!list) {
        list = [];
        merged.set(code, list);
      }
      const at = above[c]!;
      const goesOn = at >= 0 && r > 0 && codes[(r - 1) * columns + c] === code && list[at + 2] === end - c;
      if (goesOn) {
        list[at + 3]!++;
        here[c] = at;
      } else {
        here[c] = list.length;
        list.push(c, r, end - c, 1);
      }
      c = end;
    }
    above = here;
  }
  return merged;
}
