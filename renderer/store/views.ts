/** How the hanging is shown on the Draw screen. Nothing of it is part of the design. */

import type { Sight } from '../../shared/yarn/sight.ts';

/** Each knot as its two turns of yarn, as a flat square of its colour, or with its yarn's symbol. */
export type CellView = 'knots' | 'flat' | 'symbols';

/** What causes the picture's cost, marked on the chart. */
export type Marks = 'lone-knots' | 'short-runs' | 'loose-ends';

export interface Views {
  readonly cells: CellView;
  /** Whose eyes, or which print, the colours are shown for. */
  readonly sight: Sight;
  /** What it looks like across the room. */
  readonly distance: boolean;
  /** As it will hang: without rules and numbers. */
  readonly finished: boolean;
  /** Lengths along the dowel and the sides. */
  readonly rulers: boolean;
  /** Bold rules every ten cords and rows. */
  readonly rules: boolean;
  /** The cells of other layers are faded, so that the layer drawn on stands out. */
  readonly fade: boolean;
  readonly marks: Marks | null;
}

export const startingViews: Views = {
  cells: 'knots',
  sight: 'normal',
  distance: false,
  finished: false,
  rulers: false,
  rules: true,
  fade: false,
  marks: null,
};
