/**
 * Two neighbouring loose ends knotted together twice, seen from the back. Each half of the knot is three crossings; the
 * same end goes over first both times, so that the knot lies flat: a reef knot. Common practice, no source.
 */
import type { Picture } from './picture.ts';
import type { Material, Strand, Waypoint } from './strand.ts';

/** Which side an end comes from: -1 is left, 1 right. */
type Side = -1 | 1;

interface Half {
  readonly y: number;
  /** From the middle to each side. */
  readonly width: number;
  /** How far the two ends swing up and down around each other. */
  readonly swing: number;
}

/** One end's way through one half of the knot, to the other side; where it comes `over`, it goes over, under, over. */
function across(from: Side, over: boolean, { y, width, swing }: Half): Waypoint[] {
  const height = over ? 1 : -1;
  const place = (share: number, down: number, at: number): Waypoint => [
    from * width * share,
    y + down * swing,
    at,
  ];
  return [
    place(1, -0.9, height),
    place(0.667, 0, height),
    place(0.333, 0.8, 0),
    place(0, 0, -height),
    place(-0.333, -0.8, 0),
    place(-0.667, 0, height),
    place(-1, 0.9, height),
  ];
}

interface Tying {
  readonly halves: readonly Half[];
  /** Where the ends stop, from the middle, and how. */
  readonly endX: number;
  readonly endY: number;
  readonly to: 'moves' | 'cut';
}

function endOf(from: Side, { halves, endX, endY, to }: Tying): Strand {
  const isLeft = from === -1;
  const material: Material = isLeft ? 'yarn' : 'other-yarn';
  const sideAt = (index: number) => (index % 2 === 0 ? from : -from) as Side;
  const height = isLeft ? 1 : -1;
  return {
    name: isLeft ? 'left end' : 'right end',
    material,
    through: [
      [from * 4, 0, height],
      ...halves.flatMap((half, i) => across(sideAt(i), isLeft, half)),
      [sideAt(halves.length) * endX, endY, height],
    ],
    to,
  };
}

function tied(tying: Tying): Picture {
  return { strands: [endOf(-1, tying), endOf(1, tying)] };
}

export const tiedOnce = tied({
  halves: [{ y: 12, width: 8, swing: 2.6 }],
  endX: 9,
  endY: 24,
  to: 'moves',
});

export const tiedTwice = tied({
  halves: [
    { y: 8.5, width: 6.6, swing: 2.2 },
    { y: 19.5, width: 8, swing: 2.6 },
  ],
  endX: 10,
  endY: 27,
  to: 'moves',
});

export const drawnUpAndTrimmed = tied({
  halves: [
    { y: 12, width: 4.2, swing: 1.5 },
    { y: 16.6, width: 4.2, swing: 1.5 },
  ],
  endX: 7,
  endY: 23,
  to: 'cut',
});
