/**
 * The pictures of pages, decoded for the canvas: the maker's photograph and mark. A picture stands on several pages, so each
 * array of bytes is decoded once, and is forgotten with the pages that carry it.
 */
import { type CanvasPictures, imagesOn } from '../../../shared/pattern/page/draw-on-canvas.ts';
import type { ImageItem, Page } from '../../../shared/pattern/page/page.ts';

const decoded = new WeakMap<Uint8Array, Promise<ImageBitmap | undefined>>();

/** Those of one page. What can't be decoded is left out, as the canvas leaves it out. */
export async function picturesOn(page: Page): Promise<CanvasPictures<ImageBitmap>> {
  const pictures = new Map<Uint8Array, ImageBitmap>();
  for (const image of imagesOn(page)) {
    const picture = await pictureOf(image);
    if (picture) pictures.set(image.bytes, picture);
  }
  return pictures;
}

function pictureOf({ bytes, mediaType }: ImageItem): Promise<ImageBitmap | undefined> {
  const before = decoded.get(bytes);
  if (before) return before;
  const file = new Blob([new Uint8Array(bytes)], { type: mediaType });
  const picture = createImageBitmap(file).catch(() => undefined);
  decoded.set(bytes, picture);
  return picture;
}
