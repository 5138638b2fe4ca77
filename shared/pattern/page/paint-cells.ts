/**
 * Cells as few rectangles of colour, painted one colour after another. What is painted later covers what lies below, so a
 * rectangle may run on under cells of the colours still to come, and the colour of most cells begins as one rectangle
 * below all others. No drawer needs a rectangle for each cell, and no paper shows at the seams.
 */

export interface PaintedCode {
  readonly code: number;
  /** As `column, row, columns, rows` again and again, from 0. */
  readonly rects: readonly number[];
}

/** In the order of painting. `isPainted`: whether cells of a code have a colour; where they have none, nothing is painted. */
export function paintCells(
  codes: Uint8Array,
  columns: number,
  rows: number,
  isPainted: (code: number) => boolean,
): PaintedCode[] {
  const counts = new Uint32Array(256);
  for (let i = 0; i < codes.length; i++) counts[codes[i]!]!++;
  // Those of more cells come first: under them is least left to paint.
  const inOrder = Array.from(counts.keys())
    .filter((code) => counts[code]! > 0 && isPainted(code))
    .sort((a, b) => counts[b]! - counts[a]! || a - b);
  /** For each code when it is painted, from 1; 0 where it isn't. */
  const turnOf = new Uint8Array(256);
  inOrder.forEach((code, i) => {
    turnOf[code] = i + 1;
  });
  const isCovered = inOrder.reduce((sum, code) => sum + counts[code]!, 0) === codes.length;
  return inOrder.map((code, i) => ({
    code,
    rects: isCovered && i === 0 ? [0, 0, columns, rows] : rectsOf(code, i + 1, codes, columns, rows, turnOf),
  }));
}

/** Each row's stretches from the first to the last cell of the code, over cells of later turns; those below one another as one. */
function rectsOf(
  code: number,
  turn: number,
  codes: Uint8Array,
  columns: number,
  rows: number,
  turnOf: Uint8Array,
): number[] {
  const rects: number[] = [];
  /** By column: where in the list the rectangle lies that starts here in the row above, else -1. */
  let above = new Int32Array(columns).fill(-1);
  let here = new Int32Array(columns);
  for (let r = 0; r < rows; r++) {
    here.fill(-1);
    const row = r * columns;
    for (let c = 0; c < columns; c++) {
      if (turnOf[codes[row + c]!]! < turn) continue;
      const from = c;
      let [first, last] = [-1, -1];
      for (; c < columns && turnOf[codes[row + c]!]! >= turn; c++) {
        if (codes[row + c] !== code) continue;
        if (first < 0) first = c;
        last = c;
      }
      if (first < 0) continue;
      const start = startAbove(above, rects, { from, first, last, to: c });
      if (start >= 0) {
        rects[above[start]! + 3]!++;
        here[start] = above[start]!;
      } else {
        here[first] = rects.length;
        rects.push(first, r, last + 1 - first, 1);
      }
    }
    [above, here] = [here, above];
  }
  return rects;
}

/** Where a rectangle of the row above starts that can go on here: over all cells of the code, and over none of earlier turns. */
function startAbove(
  above: Int32Array,
  rects: readonly number[],
  { from, first, last, to }: Record<'from' | 'first' | 'last' | 'to', number>,
): number {
  for (let start = from; start <= first; start++) {
    const at = above[start]!;
    if (at < 0) continue;
    const end = start + rects[at + 2]!;
    if (end > last && end <= to) return start;
  }
  return -1;
}
