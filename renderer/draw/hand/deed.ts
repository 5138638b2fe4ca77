/**
 * What a tool does, as data: the hand (`hand.ts`) looks here what to draw, for pointer, pen, touch and keys alike.
 * Tools give strips; the hand copies them by the symmetry and makes the edit.
 */
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import type { Strips } from '../../../shared/chart/tools/strips.ts';
import type { Drawing } from '../../store/drawing.ts';
import type { OpenDesign } from '../../store/state.ts';
import type { Held } from '../../surface/gestures.ts';

export const nothingHeld: Held = { shift: false, alt: false, copy: false };

/** What a tool draws with. */
export interface Means {
  readonly open: OpenDesign;
  readonly drawing: Drawing;
}

export interface Deed {
  /** For the history and the menu. */
  readonly label: string;
  /** True where it draws on the layer, which must then be shown and not locked. */
  readonly draws: boolean;
  /** A freehand tool draws all along its way. */
  readonly along?: (means: Means, way: readonly Cell[]) => Strips;
  /** A shape is drawn afresh from where it was pressed to where it is. */
  readonly between?: (means: Means, from: Cell, to: Cell, held: Held) => Strips;
  /** Done once, in the cell where the tool is let go: two fingers may still take it back. */
  readonly at?: (means: Means, cell: Cell) => void;
  /** What it would draw at a cell, shown before it is pressed; none where the cell's outline says enough. */
  readonly ghost?: (means: Means, cell: Cell) => Strips;
  /** Tools with a way of their own, such as Patch. `ended` is told whether the pointer went anywhere. */
  readonly own?: {
    readonly begin: (means: Means, cell: Cell, held: Held) => void;
    readonly move: (means: Means, cell: Cell, held: Held) => void;
    readonly end: (means: Means, cell: Cell) => void;
    readonly drop: () => void;
  };
  /** True where the keyboard presses twice: once where it begins and once where it ends. */
  readonly hasTwoEnds?: (drawing: Drawing) => boolean;
}
