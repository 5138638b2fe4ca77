import { cellAverager, type PictureCells } from './cell-averager.ts';

/** A part of a picture, in whole pixels. */
export interface Crop {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The mean light of each cell of a picture that is held as a whole: `rgba` in sRGB, alpha not premultiplied, laid over
 * `background` (`#rrggbb`). `crop` lies inside the picture.
 */
export function averageCells(
  rgba: Uint8Array | Uint8ClampedArray,
  widthPx: number,
  heightPx: number,
  crop: Crop,
  columns: number,
  rows: number,
  background: string,
): PictureCells {
  if (rgba.length !== widthPx * heightPx * 4)
    throw new Error('the pixels are not as many as the picture has');
  if (crop.x < 0 || crop.x + crop.width > widthPx || crop.y < 0 || crop.y + crop.height > heightPx) {
    throw new Error('the crop reaches outside the picture');
  }
  const averager = cellAverager({
    columns,
    rows,
    widthPx: crop.width,
    heightPx: crop.height,
    channels: 4,
    background,
  });
  for (let y = crop.y; y < crop.y + crop.height; y++) averager.addRow(rgba, (y * widthPx + crop.x) * 4);
  return averager.finish();
}
