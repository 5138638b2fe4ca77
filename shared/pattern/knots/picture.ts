/** A picture of one step: strands in a frame, and a few words beside them. */
import type { Strand } from './strand.ts';

/** Height of each picture; x counts from its middle, y from its top. */
export const PICTURE_MM = 33;

/** What is written beside strands, in whatever language. */
export type DrawnWord =
  | 'cord'
  | 'yarn'
  | 'another-yarn'
  | 'end-in-hand'
  | 'tail'
  | 'hangs'
  | 'carry'
  | 'old-tail'
  | 'fresh-tail'
  | 'holding-hand'
  | 'turning-hand';

export interface PictureWord {
  readonly x: number;
  readonly y: number;
  readonly word: DrawnWord;
  /** Where `x` is, in a row that goes right. */
  readonly align: 'left' | 'center' | 'right';
}

export interface Picture {
  readonly strands: readonly Strand[];
  readonly words?: readonly PictureWord[];
}
