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
  const turnOf = turns(codes, isPainted);
  const inOrder = [...turnOf.entries()].filter(([, turn]) => turn > 0).sort(([, a], [, b]) => a - b);
  const isCovered = inOrder.length > 0 && codes.every((code) => turnOf[code]! > 0);
  return inOrder.map(([code, turn]) => ({
    code,
    rects:
      isCovered && turn === 1 ? [0, 0, columns, rows] : rectsOf(code, turn, codes, columns, rows, turnOf),
  }));
}

/** For each code when it is painted, from 1; 0 where it isn't. Those of more cells come first. */
function turns(codes: Uint8Array, isPainted: (code: number) => boolean): Uint16Array {
  const counts = new Uint32Array(256);
  for (const code of codes) counts[code]!++;
  const painted = [...counts.keys()].filter((code) => counts[code]! > 0 && isPainted(code));
  const turnOf = new Uint16Array(256);
  painted
    .sort((a, b) => counts[b]! - counts[a]! || a - b)
    .forEach((code, i) => {
      turnOf[code] = i + 1;
    });
  return turnOf;
}

/** Each row's stretches from the first to the last cell of the code, over cells of later turns; those below one another as one. */
function rectsOf(
  code: number,
  turn: number,
  codes: Uint8Array,
  columns: number,
  rows: number,
  turnOf: Uint16Array,
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
