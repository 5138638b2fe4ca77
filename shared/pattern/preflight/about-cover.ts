/** The maker's own photograph on the cover: whether it can be read, and whether it is fine enough for paper. */

import type { PatternDocument } from '../page/page.ts';
import { plainItems } from '../page/plain-items.ts';
import { printedPicture } from '../page/printed-picture.ts';
import type { PatternInput } from '../pattern-input.ts';
import type { Finding } from './finding.ts';

/** 150 pixels to an inch: below it, a printed photograph is seen to be made of squares. Common practice, no source. */
const LEAST_PX_PER_MM = 150 / 25.4;

export function aboutCover(
  { design }: Pick<PatternInput, 'design'>,
  { pages }: Pick<PatternDocument, 'pages'>,
): Finding[] {
  const { cover } = design.pattern ?? {};
  const page = pages.findIndex(({ part }) => part === 'cover');
  if (!cover || page < 0) return [];
  const place = { on: 'setting', setting: 'cover' } as const;
  const picture = printedPicture({ mediaType: cover.mediaType, base64: cover.picture });
  if (!picture) {
    return [
      {
        kind: 'photograph-unread',
        weight: 'fault',
        sentence: 'The photograph of the cover can’t be read, so the drawn hanging is printed.',
        mend: 'Choose the photograph once more.',
        place,
      },
    ];
  }
  // The designer's mark is a picture too, and smaller.
  const widthMm = plainItems(pages[page]!.items).reduce(
    (most, item) => (item.kind === 'image' ? Math.max(most, item.width) : most),
    0,
  );
  const pxPerMm = picture.widthPx / widthMm;
  if (pxPerMm >= LEAST_PX_PER_MM) return [];
  return [
    {
      kind: 'photograph-coarse',
      weight: 'doubt',
      sentence: `The photograph of the cover has ${picture.widthPx} × ${picture.heightPx} pixels, ${Math.floor(pxPerMm * 25.4)} to an inch as it is printed: it will look coarse.`,
      mend: `Choose one that is at least ${Math.ceil(widthMm * LEAST_PX_PER_MM)} pixels wide.`,
      place,
    },
  ];
}
