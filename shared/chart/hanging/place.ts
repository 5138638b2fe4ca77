/** Where a hanging stands on a page: from mm of the hanging to mm of the page. */
import type { HangingGeometry } from './geometry.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Place {
  /** Mm of the page to one of the hanging. */
  readonly scale: number;
  x(mm: number): number;
  y(mm: number): number;
}

/** As large as fits into the box, in its middle. */
export function placeIn(box: Box, { bounds }: Pick<HangingGeometry, 'bounds'>): Place {
  const width = bounds.right - bounds.left;
  const height = bounds.bottom - bounds.top;
  const scale = Math.min(box.width / width, box.height / height);
  const left = box.x + (box.width - width * scale) / 2;
  const top = box.y + (box.height - height * scale) / 2;
  return {
    scale,
    x: (mm) => left + (mm - bounds.left) * scale,
    y: (mm) => top + (mm - bounds.top) * scale,
  };
}
