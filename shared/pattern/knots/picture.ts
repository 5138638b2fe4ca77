/** A picture of one step: strands in a frame, and a few words beside them. */
import type { Strand } from './strand.ts';

/** Height of each picture; x counts from its middle, y from its top. */
export const PICTURE_MM = 33;

export interface PictureWord {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Where `x` is, in a row that goes right. */
  readonly align: 'left' | 'center' | 'right';
}

export interface Picture {
  readonly strands: readonly Strand[];
  readonly words?: readonly PictureWord[];
}
