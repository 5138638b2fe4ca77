/**
 * The packs of a parcel. A pack is what one buyer gets: the copies in one language and for one hand, on every paper, in colour and
 * in symbols alone, with cells of both sizes. A shop's page sells one pack, so each has a folder and a listing of its own.
 */
import type { Language } from '../../design/pattern-schema.ts';
import type { Copy } from '../copy.ts';
import { type Paper, papers } from '../page/papers.ts';
import { languageNames, parcelWords } from '../words/parcel-words.ts';

export interface CopyForSale {
  readonly copy: Copy;
  readonly paper: Paper;
  /** What tells it from all others of the parcel, for its file name: 'A4 colour', 'Letter symbols, large print, left-handed'. */
  readonly words: string;
}

export interface Pack {
  readonly language: Language;
  readonly leftHanded: boolean;
  /** Of its folder within the parcel: 'English, left-handed'. Empty where it is the only pack. */
  readonly folder: string;
  readonly copies: readonly CopyForSale[];
}

export interface PacksWished {
  /** What all copies share. */
  readonly copy: Copy;
  readonly languages: readonly Language[];
  /** Besides the hand of `copy` the other one too. */
  readonly bothHands: boolean;
}

/** A pack for each hand in each language; the design's own hand comes first. */
export function packsForSale({ copy, languages, bothHands }: PacksWished): Pack[] {
  const hands = bothHands ? [copy.leftHanded, !copy.leftHanded] : [copy.leftHanded];
  return hands.flatMap((leftHanded) =>
    languages.map((language) => {
      const apart = {
        language: languages.length > 1 ? [languageNames[language]] : [],
        hand: bothHands || leftHanded ? [parcelWords[language].hands[leftHanded ? 'left' : 'right']] : [],
      };
      const isAlone = languages.length === 1 && !bothHands;
      return {
        language,
        leftHanded,
        folder: isAlone ? '' : [...apart.language, ...apart.hand].join(', '),
        copies: copiesOf({ ...copy, leftHanded, language }, [...apart.hand, ...apart.language]),
      };
    }),
  );
}

function copiesOf(copy: Copy, apart: readonly string[]): CopyForSale[] {
  const { inks, largePrint } = parcelWords[copy.language];
  return (['standard', 'large'] as const).flatMap((cells) =>
    (['colour', 'symbols'] as const).flatMap((ink) =>
      (Object.keys(papers) as Paper[]).map((paper) => ({
        copy: { ...copy, cells, ink },
        paper,
        words: [
          `${papers[paper].name} ${inks[ink]}`,
          ...(cells === 'large' ? [largePrint] : []),
          ...apart,
        ].join(', '),
      })),
    ),
  );
}
