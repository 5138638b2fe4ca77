/**
 * What is copied while something is drawn: a point group about a centre (mirrors and turns), and beside it a lattice
 * of repeats. Either may be 'none', and any two go together: with both, every mirrored or turned image is repeated.
 *
 * A cell can only be copied to a cell, so a kind may ask for more than a person has set: quarter turns for a centre
 * that is as deep in a cord as in a row, half drop for an even number of rows. `soundSymmetry` gives the nearest
 * symmetry that holds; everything here that copies or draws goes by that.
 */

/**
 * The point about which is mirrored and turned, in half cells from the chart's top left corner: the middle of the cord
 * at column c is 2c + 1, the place between two cords is even. The same for rows.
 */
export interface Centre {
  readonly acrossHalves: number;
  readonly downHalves: number;
}

/** The point groups that bring square cells to cells: D1 in four directions, D2 in two, C2, C4, D4, and none. */
export type PointKind =
  | 'none'
  | 'mirror-left-right'
  | 'mirror-top-bottom'
  | 'mirror-both'
  | 'mirror-diagonal'
  | 'mirror-antidiagonal'
  | 'mirror-diagonals'
  | 'half-turn'
  | 'quarter-turn'
  | 'quarter-turn-mirrored';

export type RepeatKind = 'none' | 'translation' | 'half-drop';

export interface Symmetry {
  readonly point: PointKind;
  readonly centre: Centre;
  readonly repeat: RepeatKind;
  /** From one repeat to the next to its right, in cells; at least 1. Of no account where `repeat` is 'none'. */
  readonly periodColumns: number;
  /** From one repeat to the next below it, in cells; at least 1. */
  readonly periodRows: number;
}

export const noSymmetry: Symmetry = {
  point: 'none',
  centre: { acrossHalves: 0, downHalves: 0 },
  repeat: 'none',
  periodColumns: 1,
  periodRows: 1,
};
