/** How the tools draw: chosen in the tool's options, kept while the studio runs, whatever design is open. */
export type NibShape = 'round' | 'square' | 'flat-across' | 'flat-down';
export type FillScope = 'touching' | 'everywhere' | 'to-boundary';
export type ReplaceScope = 'chart' | 'layer' | 'patch';
export type PatchBy = 'rectangle' | 'freehand' | 'yarn';

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
}

export const startingDrawing: Drawing = {
  width: 1,
  nib: 'round',
  filled: true,
  fill: 'touching',
  replaceIn: 'chart',
  patchBy: 'rectangle',
};
