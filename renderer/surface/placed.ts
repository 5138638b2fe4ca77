import type { View } from './view.ts';

/** How the hanging lies on a screen of so many device pixels. */
export interface Placed {
  readonly view: View;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Device pixels in a CSS pixel: letters and lines keep their size on every screen. */
  readonly ratio: number;
  /** While zooming, tiles are stretched and none are made. */
  readonly isZooming: boolean;
}
