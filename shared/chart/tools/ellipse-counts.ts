/**
 * How many cells each row of a filled ellipse has, for the ellipse that touches all four sides of a box of `columns` x
 * `rows` cells. The rows lie centred in the box, so that the ellipse mirrors onto itself both ways.
 *
 * A cell belongs to it where its middle lies in the true ellipse. Two things the eye wants otherwise. The middle rows
 * and columns reach the sides of the box, however flat the ellipse is. And a cell is left out that would stand as a
 * square corner, two or more cells across and two or more down: so three by three looks round, and an outline goes on
 * by corners.
 */
export function ellipseCounts(columns: number, rows: number): Int32Array {
  const counts = new Int32Array(rows);
  const least = columns % 2 === 0 ? 2 : 1;
  const half = Math.ceil(rows / 2);
  for (let row = 0; row < half; row++) {
    // Twice the distance of the row's middle from the box's, so that it is whole in even boxes too.
    const off = rows - 1 - 2 * row;
    counts[row] = off <= 1 ? columns : Math.max(least, widestAt(off, columns, rows));
  }
  for (let row = 0; row < half; row++) {
    if (standsAsCorner(counts, row, rows) && counts[row]! > least) counts[row]! -= 2;
    counts[rows - 1 - row] = counts[row]!;
  }
  return counts;
}

/** The cells of a row whose middles lie in the ellipse: as many as fit, and even in number where the columns are. */
function widestAt(off: number, columns: number, rows: number): number {
  // The middle of the last of `count` cells lies half of `count - 1` from the box's middle.
  const isWithin = (count: number) =>
    ((count - 1) * rows) ** 2 + (off * columns) ** 2 <= (columns * rows) ** 2;
  const about = Math.floor(columns * Math.sqrt(1 - (off / rows) ** 2)) + 1;
  let count = about - ((about + columns) % 2);
  // The root is rounded; whole numbers decide about the last cell.
  while (count > 0 && !isWithin(count)) count -= 2;
  while (count + 2 <= columns && isWithin(count + 2)) count += 2;
  return count;
}

/** True where the first cell of a row of the upper half, the middle rows excepted, has no neighbour by a corner. */
function standsAsCorner(counts: Int32Array, row: number, rows: number): boolean {
  const isMiddle = rows - 1 - 2 * row <= 1;
  const goesAcross = row === 0 || counts[row]! - counts[row - 1]! >= 4;
  return !isMiddle && goesAcross && counts[row + 1] === counts[row];
}
