/**
 * A drawing of rope and yarn, as lines in space: how each strand runs across the paper, and how near it comes to the
 * eye. Which strand lies on top where two cross is never drawn by hand; it follows from the heights (`crossings.ts`).
 */

/** A place that a strand goes through: x and y in mm, y downwards, and its height towards the eye. */
export type Waypoint = readonly [x: number, y: number, height: number];

export type Material = 'cord' | 'yarn' | 'other-yarn' | 'wood';

export interface Strand {
  /** Told apart in tests and in words: 'yarn', 'left leg'. */
  readonly name: string;
  readonly material: Material;
  /** Laid through these in order, as a smooth curve. At least two. */
  readonly through: readonly Waypoint[];
  /** Goes on beyond the picture where absent. 'round' is for the front of a turn, whose ends go out of sight. */
  readonly from?: 'cut' | 'round';
  /** 'moves' is the end in the maker's hand, shown by an arrow. */
  readonly to?: 'cut' | 'round' | 'moves';
}

/** Diameters as drawn, in mm. */
export const diametersMm: Readonly<Record<Material, number>> = {
  cord: 4.4,
  yarn: 2.5,
  'other-yarn': 2.5,
  wood: 8,
};
