/** Finishing: from the last row to the wall. The steps are a first version, which a designer may replace. */
import type { Worded } from './worded.ts';

/** Figures as they are shown. */
export interface FinishingFigures {
  readonly looseEnds: string;
  readonly size: string;
  /** Of the shortest and the longest cord; one figure where the fringe is straight. */
  readonly fringe: string;
  readonly straight: boolean;
  readonly mass: string;
}

interface FinishingWords {
  readonly title: string;
  readonly steps: string;
  readonly tyingOff: string;
  /** On which page tying off is drawn, where that is another part's. */
  readonly drawnOn: (page: number) => string;
  /** Below the three drawings, and what is seen in them. */
  readonly drawings: readonly (readonly [sentence: string, alt: string])[];
  readonly finished: string;
  readonly finishedAlt: (size: string) => string;
  /** A line is a step. */
  readonly text: (figures: FinishingFigures) => string;
}

export const finishingWords: Worded<FinishingWords> = {
  en: {
    title: 'Finishing',
    steps: 'From the last row to the wall',
    tyingOff: 'Tying off, seen from the back',
    drawnOn: (page) => `How ends are tied off is drawn on page ${page}.`,
    drawings: [
      [
        'Wind two neighbouring ends round each other once.',
        'Two ends wound round each other: three crossings.',
      ],
      [
        'Once more, the other way round.',
        'The ends wound round each other a second time, below, the other way round.',
      ],
      ['Draw the knot close to the work, and trim the ends.', 'The flat knot drawn up, its ends cut short.'],
    ],
    finished: 'When it is done',
    finishedAlt: (size) => `The outline of the finished hanging with its measures: ${size}.`,
    text: ({ looseEnds, size, fringe, straight, mass }) =>
      [
        `Turn the work over. ${looseEnds} loose ends lie at the back: knot neighbouring ones together twice, as drawn, and trim them to about 2 cm; or only trim them, where the knots of the picture hold them well.`,
        `Turn it back and smooth the picture with your hand. It should measure about ${size}. Draw cords straight from below where rows have slipped.`,
        'If a backing shall cover the ends, cut felt a little smaller than the picture and sew it to the outermost cords with small stitches.',
        'Comb the fringe from the ends upwards, and let the work hang for a day: cords grow straight by their own weight.',
        straight
          ? `Trim the fringe last, all cords alike: ${fringe} below the last row.`
          : `Trim the fringe last, against its template: ${fringe} below the last row.`,
        `Tie a length of cord to both ends of the dowel. The hanging weighs about ${mass}: use a fixing that suits the wall and holds several times as much.`,
      ].join('\n'),
  },
  de: {
    title: 'Fertigstellen',
    steps: 'Von der letzten Reihe bis an die Wand',
    tyingOff: 'Enden verknoten, von hinten gesehen',
    drawnOn: (page) => `Wie Sie die Enden verknoten, zeigt Seite ${page}.`,
    drawings: [
      [
        'Schlingen Sie zwei benachbarte Enden einmal umeinander.',
        'Zwei Enden, umeinander geschlungen: drei Kreuzungen.',
      ],
      [
        'Noch einmal, anders herum.',
        'Die Enden darunter ein zweites Mal umeinander geschlungen, anders herum.',
      ],
      [
        'Ziehen Sie den Knoten dicht an die Arbeit und kürzen Sie die Enden.',
        'Der flache, festgezogene Knoten, die Enden kurz geschnitten.',
      ],
    ],
    finished: 'Der fertige Wandbehang',
    finishedAlt: (size) => `Der Umriss des fertigen Wandbehangs mit seinen Maßen: ${size}.`,
    text: ({ looseEnds, size, fringe, straight, mass }) =>
      [
        `Wenden Sie die Arbeit. Hinten liegen ${looseEnds} lose Enden: Verknoten Sie benachbarte zweimal miteinander, wie gezeichnet, und kürzen Sie sie auf etwa 2 cm; oder kürzen Sie sie nur, wo die Knoten des Bildes sie gut halten.`,
        `Wenden Sie sie zurück und streichen Sie das Bild mit der Hand glatt. Es sollte etwa ${size} messen. Wo Reihen verrutscht sind, ziehen Sie die Schnüre von unten gerade.`,
        'Soll eine Rückseite die Enden verdecken, schneiden Sie Filz etwas kleiner als das Bild zu und nähen ihn mit kleinen Stichen an die äußersten Schnüre.',
        'Kämmen Sie die Fransen von den Enden her aus und lassen Sie die Arbeit einen Tag hängen: Schnüre werden durch ihr eigenes Gewicht gerade.',
        straight
          ? `Schneiden Sie die Fransen zuletzt, alle Schnüre gleich lang: ${fringe} unter der letzten Reihe.`
          : `Schneiden Sie die Fransen zuletzt nach der Schablone: ${fringe} unter der letzten Reihe.`,
        `Binden Sie ein Stück Schnur an beide Enden des Rundholzes. Der Wandbehang wiegt etwa ${mass}: Wählen Sie eine Befestigung, die zur Wand passt und ein Mehrfaches trägt.`,
      ].join('\n'),
  },
};
