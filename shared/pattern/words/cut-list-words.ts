/** The cut list. Figures come as they are shown. */
import type { Worded } from './worded.ts';

interface CutListWords {
  readonly title: string;
  readonly introduction: string;
  readonly cords: string;
  readonly cordHeads: readonly [cords: string, pieces: string, length: string, together: string];
  readonly mounting: string;
  readonly yarn: string;
  readonly alike: (length: string, tail: string) => string;
  /** Where pieces are cut as long as they are used. */
  readonly fitted: (figures: {
    readonly reserve: string;
    readonly step: string;
    readonly longest: string;
    /** Null where pieces of one length would take no more. */
    readonly saved: string | null;
  }) => string;
  readonly yarnHeads: readonly [
    yarn: string,
    pieces: string,
    length: string,
    together: string,
    firstRow: string,
  ];
  readonly together: (pieces: number, shown: string, length: string) => string;
  readonly numbers: string;
  readonly aboutNumbers: string;
  readonly numbersOf: (length: string, numbers: string) => string;
}

export const cutListWords: Worded<CutListWords> = {
  en: {
    title: 'Cut list',
    introduction:
      'Cut everything before you begin, or each bundle just before the row where it comes in. Tick what is cut.',
    cords: 'Cord',
    cordHeads: ['for cords', 'pieces', 'length each', 'together'],
    mounting: 'Fold each in half, and mount them side by side in the order of the cords.',
    yarn: 'Yarn',
    alike: (length, tail) =>
      `All pieces are cut alike, ${length}, with a tail of ${tail} at each end. Those of one yarn make a bundle.`,
    fitted: ({ reserve, step, longest, saved }) =>
      `Each piece is cut as long as it is used, with ${reserve} to spare, up to the next ${step}; none is longer than ${longest}, whatever is then to spare. Pieces of one yarn and one length make a bundle.${saved ? ` This saves ${saved} of yarn against pieces of one length.` : ''}`,
    yarnHeads: ['yarn', 'pieces', 'length each', 'together', 'from row'],
    together: (pieces, shown, length) =>
      `Together ${shown} ${pieces === 1 ? 'piece' : 'pieces'}, ${length} of yarn.`,
    numbers: 'Which piece is which',
    aboutNumbers:
      'The pieces of a yarn are numbered in the order in which they are attached or joined. Mark each bundle with its numbers, and take them from it in turn.',
    numbersOf: (length, numbers) => `${length}: ${numbers}`,
  },
  de: {
    title: 'Zuschnitt',
    introduction:
      'Schneiden Sie alles zu, bevor Sie beginnen, oder jedes Bündel erst vor der Reihe, in der es gebraucht wird. Haken Sie ab, was zugeschnitten ist.',
    cords: 'Schnur',
    cordHeads: ['für die Schnüre', 'Stücke', 'Länge je Stück', 'zusammen'],
    mounting:
      'Legen Sie jede Schnur doppelt und hängen Sie die Schnüre nebeneinander ein, in der Reihenfolge ihrer Nummern.',
    yarn: 'Garn',
    alike: (length, tail) =>
      `Alle Stücke werden gleich lang zugeschnitten, ${length}, mit je ${tail} Fadenende an beiden Seiten. Alle Stücke eines Garns bilden ein Bündel.`,
    fitted: ({ reserve, step, longest, saved }) =>
      `Jedes Stück wird so lang zugeschnitten, wie es gebraucht wird, mit ${reserve} Reserve, aufgerundet in Schritten von ${step}; keines ist länger als ${longest}, auch wenn dann weniger Reserve bleibt. Gleich lange Stücke eines Garns bilden ein Bündel.${saved ? ` Das spart ${saved} Garn gegenüber Stücken von gleicher Länge.` : ''}`,
    yarnHeads: ['Garn', 'Stücke', 'Länge je Stück', 'zusammen', 'ab Reihe'],
    together: (pieces, shown, length) =>
      `Zusammen ${shown} ${pieces === 1 ? 'Stück' : 'Stücke'}, ${length} Garn.`,
    numbers: 'Die Nummern der Stücke',
    aboutNumbers:
      'Die Stücke eines Garns sind in der Reihenfolge nummeriert, in der sie angesetzt oder angefügt werden. Schreiben Sie die Nummern an jedes Bündel und nehmen Sie die Stücke der Reihe nach heraus.',
    numbersOf: (length, numbers) => `${length}: ${numbers}`,
  },
};
