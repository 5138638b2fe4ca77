/** How a shape is drawn: filled, or as its outline, so many cells wide and growing inwards from the shape's edge. */
export interface Outline {
  readonly filled: boolean;
  /** Cells, from 1. Of no account where the shape is filled. */
  readonly width: number;
}
