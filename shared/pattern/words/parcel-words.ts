/** What is said of the files that are sold together. */
import type { Language } from '../../design/pattern-schema.ts';
import { counted } from '../../units/counted.ts';
import type { Copy } from '../copy.ts';
import type { Worded } from './worded.ts';

interface ParcelWords {
  readonly inks: Readonly<Record<Copy['ink'], string>>;
  readonly largePrint: string;
  readonly hands: { readonly left: string; readonly right: string };
  /** Of the folder or archive: 'Moth at the window, for sale'. */
  readonly parcel: (title: string) => string;
  readonly listing: string;
  /** Beside the hanging in a picture for the shop, a line each. Figures come as they are shown. */
  readonly facts: (figures: {
    /** In each of the units. */
    readonly sizes: readonly string[];
    readonly cords: string;
    readonly rows: string;
    readonly time: string;
  }) => readonly string[];
  readonly pictures: Readonly<Record<'square' | 'upright' | 'wide' | 'close' | 'pages', string>>;
}

/** Each in itself, as those who read it look for it. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

export const parcelWords: Worded<ParcelWords> = {
  en: {
    inks: { colour: 'colour', symbols: 'symbols', grey: 'greys' },
    largePrint: 'large print',
    hands: { left: 'left-handed', right: 'right-handed' },
    parcel: (title) => `${title}, for sale`,
    listing: 'listing',
    facts: ({ sizes, cords, rows, time }) => [
      ...sizes,
      `${counted(cords, 'cord')}, ${counted(rows, 'row')}`,
      `about ${time}`,
    ],
    pictures: {
      square: 'shop picture, square',
      upright: 'shop picture, upright with its name',
      wide: 'shop picture, wide with its figures',
      close: 'shop picture, the knots',
      pages: 'shop picture, the pages',
    },
  },
  de: {
    inks: { colour: 'farbig', symbols: 'Symbole', grey: 'grau' },
    largePrint: 'Großdruck',
    hands: { left: 'linkshändig', right: 'rechtshändig' },
    parcel: (title) => `${title}, zum Verkauf`,
    listing: 'Angebotstext',
    facts: ({ sizes, cords, rows, time }) => [
      ...sizes,
      `${counted(cords, 'Schnur', 'Schnüre')}, ${counted(rows, 'Reihe', 'Reihen')}`,
      `etwa ${time}`,
    ],
    pictures: {
      square: 'Angebotsbild, quadratisch',
      upright: 'Angebotsbild, hochkant mit Titel',
      wide: 'Angebotsbild, quer mit Angaben',
      close: 'Angebotsbild, die Knoten',
      pages: 'Angebotsbild, die Seiten',
    },
  },
};
