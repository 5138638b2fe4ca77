/**
 * The lift mark's two shapes: a triangle in the upper left corner of a cell, for rows that go to the right, and one in the
 * upper right corner. The symbols' font has them beside the alphabet, so that a chart of thousands of marks stays small;
 * Unicode has a character for each (Geometric Shapes, U+25E4 and U+25E5).
 */
import type { PathStep } from '../pattern/page/page.ts';

interface LiftShape {
  readonly text: string;
  /** In the unit square of the cell, x to the right and y down. */
  readonly outline: readonly PathStep[];
}

/** Of the cell's side. */
const SIDE = 0.3;

export const liftShapes: Readonly<Record<'left' | 'right', LiftShape>> = {
  left: { text: '\u25e4', outline: [['M', 0, 0], ['L', SIDE, 0], ['L', 0, SIDE], ['Z']] },
  right: { text: '\u25e5', outline: [['M', 1, 0], ['L', 1, SIDE], ['L', 1 - SIDE, 0], ['Z']] },
};
