/** Taller or broader cells than this would not fit a page; the gauge then is a slip of measuring. */
const MOST = 3;

/** The knot's width over its height, within what a page can show. */
export function printedAspect({
  pitchMm,
  rowHeightMm,
}: {
  readonly pitchMm: number;
  readonly rowHeightMm: number;
}): number {
  return Math.min(Math.max(pitchMm / rowHeightMm, 1 / MOST), MOST);
}
