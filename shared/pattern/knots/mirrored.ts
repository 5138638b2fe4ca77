/** The same picture for a row that goes the other way: left and right change places, over and under stay. */
import type { Picture, PictureWord } from './picture.ts';

const otherSide: Record<PictureWord['align'], PictureWord['align']> = {
  left: 'right',
  center: 'center',
  right: 'left',
};

export function mirrored({ strands, words = [] }: Picture): Picture {
  return {
    strands: strands.map((strand) => ({
      ...strand,
      through: strand.through.map(([x, y, height]) => [-x, y, height] as const),
    })),
    words: words.map((word) => ({ ...word, x: -word.x, align: otherSide[word.align] })),
  };
}
