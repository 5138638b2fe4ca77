/** The designer's mark, from the imprint, at its place on a page. */

import type { PatternContext } from '../pattern-input.ts';
import { coverWords } from '../words/cover-words.ts';
import type { ImageItem } from './page.ts';
import type { Area } from './papers.ts';
import { printedPicture } from './printed-picture.ts';

/** As large as fits into the area, in the corner that is named; null where there is none. */
export function markIn(
  { imprint, printer, copy }: Pick<PatternContext, 'imprint' | 'printer' | 'copy'>,
  area: Area,
  corner: 'top left' | 'top right',
): ImageItem | null {
  const mark = imprint.mark && printedPicture(imprint.mark);
  if (!mark) return null;
  const { widthPx, heightPx, mediaType, bytes } = mark;
  const scale = Math.min(area.width / widthPx, area.height / heightPx);
  const [width, height] = [widthPx * scale, heightPx * scale];
  return {
    kind: 'image',
    x: corner === 'top left' ? area.x : area.x + area.width - width,
    y: area.y,
    width,
    height,
    mediaType,
    bytes,
    alt: coverWords[copy.language].mark(printer.printable(imprint.workshop || imprint.name)),
  };
}
