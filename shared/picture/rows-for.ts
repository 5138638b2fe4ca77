/**
 * Rows that keep a picture's proportions: a knot is seldom as high as it is wide, so a square picture needs as many
 * rows as its width in mm holds row heights. Never less than 1; whether it is more than a chart can have
 * (`limits.rows`) is for the caller to tell.
 */
export function rowsFor(
  columns: number,
  cropWidthPx: number,
  cropHeightPx: number,
  pitchMm: number,
  rowHeightMm: number,
): number {
  const heightMm = (columns * pitchMm * cropHeightPx) / cropWidthPx;
  return Math.max(1, Math.round(heightMm / rowHeightMm));
}
