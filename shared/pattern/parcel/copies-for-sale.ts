/**
 * The copies of a pattern that are sold together: every paper, in colour and in symbols alone, with cells of both sizes, for
 * each hand and in each language that is wished.
 */
import type { Language } from '../../design/pattern-schema.ts';
import type { Copy } from '../copy.ts';
import { type Paper, papers } from '../papers.ts';
import { parcelWords } from '../words/parcel-words.ts';

export interface CopyForSale {
  readonly copy: Copy;
  readonly paper: Paper;
  /** What tells it from the others, for its file name: 'A4 colour', 'Letter symbols, large print, left-handed'. */
  readonly words: string;
}

export interface CopiesWished {
  /** What all copies share. */
  readonly copy: Copy;
  readonly languages: readonly Language[];
  /** Besides the hand of `copy` the other one too. */
  readonly bothHands: boolean;
}

/** Those of one hand and language stand together: the first hand is that of the design. */
export function copiesForSale({ copy, languages, bothHands }: CopiesWished): CopyForSale[] {
  const hands = bothHands ? [copy.leftHanded, !copy.leftHanded] : [copy.leftHanded];
  return hands.flatMap((leftHanded) =>
    languages.flatMap((language) =>
      (['standard', 'large'] as const).flatMap((cells) =>
        (['colour', 'symbols'] as const).flatMap((ink) =>
          (Object.keys(papers) as Paper[]).map((paper) => ({
            copy: { ...copy, leftHanded, language, cells, ink },
            paper,
            words: wordsOf(language, { paper, ink, cells, leftHanded, bothHands }),
          })),
        ),
      ),
    ),
  );
}

function wordsOf(
  language: Language,
  {
    paper,
    ink,
    cells,
    leftHanded,
    bothHands,
  }: Pick<Copy, 'ink' | 'cells' | 'leftHanded'> & { paper: Paper; bothHands: boolean },
): string {
  const { inks, largePrint, hands } = parcelWords[language];
  return [
    `${papers[paper].name} ${inks[ink]}`,
    ...(cells === 'large' ? [largePrint] : []),
    ...(bothHands || leftHanded ? [leftHanded ? hands.left : hands.right] : []),
  ].join(', ');
}
