/**
 * The least number of cells after which a stretch of them comes again, the last time perhaps in part: 1 where all are alike,
 * all of them where nothing repeats. Found from the longest beginning that is an end as well (Knuth, Morris and Pratt 1977), in
 * time that grows with the cells.
 */

/** Of the `count` cells from `first` on. `spare`: room for one number more than cells, for whoever asks often. */
export function leastPeriod(
  cells: ArrayLike<unknown>,
  first = 0,
  count = cells.length,
  spare = new Int32Array(count + 1),
): number {
  // At `length`: how long the longest beginning of these first cells is that is their end as well, and not all of them.
  const overlap = spare.fill(0, 0, 2);
  let same = 0;
  for (let at = 1; at < count; at++) {
    const cell = cells[first + at];
    while (same > 0 && cells[first + same] !== cell) same = overlap[same]!;
    if (cells[first + same] === cell) same++;
    overlap[at + 1] = same;
  }
  return count - same;
}
