/** How the tools draw: chosen in the tool's options, kept while the studio runs, whatever design is open. */
import type { Border } from '../../shared/chart/borders/border-strips.ts';
import { noSymmetry, type Symmetry } from '../../shared/chart/symmetry/symmetry.ts';
import type { AlphabetId } from '../../shared/chart/text/alphabets.ts';
import type { FillScope } from '../../shared/chart/tools/fill-strips.ts';
import type { NibShape } from '../../shared/chart/tools/nib.ts';

/** Where Replace yarn works: every layer, the layer drawn on, or the patch on that layer. */
export type ReplaceScope = 'chart' | 'layer' | 'patch';
export type PatchBy = 'rectangle' | 'freehand' | 'yarn';
export type MotifTurn = 'as-kept' | 'right' | 'half' | 'left';
export type TextAlign = 'start' | 'middle' | 'end';

export interface Drawing {
  /** Cells across of what Knot, Unpick, Line and outlines draw with. */
  readonly width: number;
  readonly nib: NibShape;
  /** Rectangle and Ellipse: filled, or their outline only. */
  readonly filled: boolean;
  readonly fill: FillScope;
  /** Where Replace yarn works. */
  readonly replaceIn: ReplaceScope;
  readonly patchBy: PatchBy;
  readonly text: string;
  readonly alphabet: AlphabetId;
  readonly align: TextAlign;
  /** The motif set down, by its id; null where none was chosen. */
  readonly motif: string | null;
  readonly motifTurn: MotifTurn;
  readonly motifFlipped: boolean;
  readonly motifUpsideDown: boolean;
  /** `motif` null: the border is laid from the chosen patch. */
  readonly border: Omit<Border, 'motif'> & { readonly motif: string | null };
  /** Copies what every tool draws. Its centre belongs to the design that is open. */
  readonly symmetry: Symmetry;
}

export const startingDrawing: Drawing = {
  width: 1,
  nib: 'round',
  filled: true,
  fill: 'touching',
  replaceIn: 'chart',
  patchBy: 'rectangle',
  text: '',
  alphabet: 'small',
  align: 'start',
  motif: null,
  motifTurn: 'as-kept',
  motifFlipped: false,
  motifUpsideDown: false,
  border: {
    group: 'p1m1',
    motif: null,
    edges: { top: true, right: true, bottom: true, left: true },
    insetCells: 0,
    corners: 'mitred',
  },
  symmetry: noSymmetry,
};
