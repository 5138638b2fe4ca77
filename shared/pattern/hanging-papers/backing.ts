/** The backing that covers loose ends: how large it is cut, and where it is sewn on. Lengths in mm. */

export interface Backing {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Between its edge and that of the picture, on all sides. */
  readonly insetMm: number;
  /** Where it is sewn on, from its upper left corner: along the top, then down both sides. */
  readonly marks: readonly { readonly x: number; readonly y: number }[];
  readonly top: Marks;
  readonly side: Marks;
}

/** Marks in a line from corner to corner, both of which are counted. */
export interface Marks {
  readonly count: number;
  readonly apartMm: number;
}

/** About a hand's breadth between two marks, and what is not seen from the front: values from memory. */
const APART_MM = 60;
const INSET_MM = 6;

/** Null where the picture is too small for one. */
export function backingOf({
  widthMm,
  knottedHeightMm,
}: {
  widthMm: number;
  knottedHeightMm: number;
}): Backing | null {
  const width = widthMm - 2 * INSET_MM;
  const height = knottedHeightMm - 2 * INSET_MM;
  if (width < LEAST_MM || height < LEAST_MM) return null;
  const top = marksAlong(width);
  const side = marksAlong(height);
  return {
    widthMm: width,
    heightMm: height,
    insetMm: INSET_MM,
    top,
    side,
    marks: [
      ...Array.from({ length: top.count }, (_, i) => ({ x: i * top.apartMm, y: 0 })),
      ...Array.from({ length: side.count - 1 }, (_, i) => (i + 1) * side.apartMm).flatMap((y) => [
        { x: 0, y },
        { x: width, y },
      ]),
    ],
  };
}

/** A backing smaller than this covers nothing. */
const LEAST_MM = 20;

function marksAlong(lengthMm: number): Marks {
  const count = Math.max(2, Math.round(lengthMm / APART_MM) + 1);
  return { count, apartMm: lengthMm / (count - 1) };
}
