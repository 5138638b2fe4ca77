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
    drawings: [
      [
        'Zwei benachbarte Enden einmal umeinander schlingen.',
        'Zwei Enden, umeinander geschlungen: drei Kreuzungen.',
      ],
      [
        'Noch einmal, anders herum.',
        'Die Enden darunter ein zweites Mal umeinander geschlungen, anders herum.',
      ],
      [
        'Den Knoten dicht an die Arbeit ziehen und die Enden kürzen.',
        'Der flache, festgezogene Knoten, die Enden kurz geschnitten.',
      ],
    ],
    finished: 'Wenn er fertig ist',
    finishedAlt: (size) => `Der Umriss des fertigen Wandbehangs mit seinen Maßen: ${size}.`,
    text: ({ looseEnds, size, fringe, straight, mass }) =>
      [
        `Die Arbeit wenden. Hinten liegen ${looseEnds} lose Enden: benachbarte zweimal miteinander verknoten, wie gezeichnet, und auf etwa 2 cm kürzen; oder nur kürzen, wo die Knoten des Bildes sie gut halten.`,
        `Die Arbeit zurückwenden und das Bild mit der Hand glatt streichen. Es sollte etwa ${size} messen. Wo Reihen verrutscht sind, die Schnüre von unten gerade ziehen.`,
        'Soll eine Rückseite die Enden verdecken: Filz etwas kleiner als das Bild zuschneiden und mit kleinen Stichen an die äußersten Schnüre nähen.',
        'Die Fransen von den Enden her auskämmen und die Arbeit einen Tag hängen lassen: Schnüre werden durch ihr eigenes Gewicht gerade.',
        straight
          ? `Zuletzt die Fransen schneiden, alle Schnüre gleich lang: ${fringe} unter der letzten Reihe.`
          : `Zuletzt die Fransen nach der Schablone schneiden: ${fringe} unter der letzten Reihe.`,
        `Ein Stück Schnur an beide Enden des Rundholzes binden. Der Wandbehang wiegt etwa ${mass}: eine Befestigung wählen, die zur Wand passt und ein Mehrfaches trägt.`,
      ].join('\n'),
  },
};
