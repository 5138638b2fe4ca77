/** Finishing: from the last row to the wall. The steps are a first version, which a designer may replace. */
import type { Worded } from './worded.ts';

/** Figures as they are shown. */
export interface FinishingFigures {
  /** Null where there are none. */
  readonly looseEnds: string | null;
  /** How long a loose end is left. */
  readonly trimmed: string;
  readonly size: string;
  /** Null where nothing hangs below the last row. */
  readonly fringe: FringeFigures | null;
  readonly mass: string;
}

interface FringeFigures {
  /** Of the shortest and the longest cord: alike where the fringe is straight. */
  readonly shortest: string;
  readonly longest: string;
  /** Whether the pattern has a template to trim it by. */
  readonly hasTemplate: boolean;
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
    text: ({ looseEnds, trimmed, size, fringe, mass }) =>
      [
        ...(looseEnds === null
          ? []
          : [
              `Turn the work over. At the back are ${looseEnds} loose ends: knot neighbouring ones together twice, as drawn, and trim them to about ${trimmed}. Where the knots of the picture hold them well, it is enough to trim them.`,
            ]),
        `Lay the work face up and smooth the picture with your hand. It should measure about ${size}. Where rows have slipped, pull the cords straight from below.`,
        'If you want a backing to cover the back, cut felt a little smaller than the picture and sew it to the outermost cords with small stitches.',
        ...(fringe === null
          ? [
              'Let the work hang for a day: cords grow straight by their own weight. Then trim them below the last row.',
            ]
          : [
              'Comb the fringe from the ends upwards, and let the work hang for a day: cords grow straight by their own weight.',
              `Trim the fringe last${fringe.hasTemplate && fringe.shortest !== fringe.longest ? ', against its template' : ''}: ${fringe.shortest === fringe.longest ? `all cords alike, ${fringe.longest}` : `from ${fringe.shortest} to ${fringe.longest}`} below the last row.`,
            ]),
        `Tie a length of cord to both ends of the dowel. The hanging weighs about ${mass}: use a fixing that suits the wall and holds several times as much.`,
      ].join('\n'),
  },
  de: {
    title: 'Fertigstellen',
    steps: 'Von der letzten Reihe bis an die Wand',
    tyingOff: 'Lose Enden verknoten, von hinten gesehen',
    drawnOn: (page) => `Wie Sie die Enden verknoten, zeigt Seite ${page}.`,
    drawings: [
      [
        'Schlingen Sie zwei benachbarte Enden einmal umeinander.',
        'Zwei Enden, umeinander geschlungen: drei Kreuzungen.',
      ],
      [
        'Noch einmal, andersherum.',
        'Die Enden darunter ein zweites Mal umeinander geschlungen, andersherum.',
      ],
      [
        'Ziehen Sie den Knoten dicht an die Arbeit und kürzen Sie die Enden.',
        'Der flache, festgezogene Knoten, die Enden kurz geschnitten.',
      ],
    ],
    finished: 'Der fertige Wandbehang',
    finishedAlt: (size) => `Der Umriss des fertigen Wandbehangs mit seinen Maßen: ${size}.`,
    text: ({ looseEnds, trimmed, size, fringe, mass }) =>
      [
        ...(looseEnds === null
          ? []
          : [
              `Drehen Sie die Arbeit um. Auf der Rückseite sind ${looseEnds} lose Enden: Verknoten Sie je zwei benachbarte doppelt, wie gezeichnet, und kürzen Sie sie auf etwa ${trimmed}. Wo die Knoten des Bildes sie gut halten, genügt es, sie zu kürzen.`,
            ]),
        `Legen Sie die Arbeit mit dem Bild nach oben und streichen Sie sie mit der Hand glatt. Das Bild sollte etwa ${size} messen. Wo Reihen verrutscht sind, ziehen Sie die Schnüre von unten gerade.`,
        'Wenn Sie die Rückseite verdecken möchten, schneiden Sie Filz etwas kleiner als das Bild zu und nähen Sie ihn mit kleinen Stichen an die äußersten Schnüre.',
        ...(fringe === null
          ? [
              'Lassen Sie die Arbeit einen Tag hängen: Die Schnüre werden durch ihr eigenes Gewicht gerade. Schneiden Sie sie dann unter der letzten Reihe ab.',
            ]
          : [
              'Kämmen Sie die Fransen von den Enden nach oben aus und lassen Sie die Arbeit einen Tag hängen: Die Schnüre werden durch ihr eigenes Gewicht gerade.',
              `Schneiden Sie die Fransen zuletzt${fringe.hasTemplate && fringe.shortest !== fringe.longest ? ' nach der Schablone' : ''}: ${fringe.shortest === fringe.longest ? `alle Schnüre gleich lang, ${fringe.longest}` : `${fringe.shortest} bis ${fringe.longest}`} unter der letzten Reihe.`,
            ]),
        `Binden Sie ein Stück Schnur an beide Enden des Rundholzes. Der Wandbehang wiegt etwa ${mass}: Wählen Sie eine Befestigung, die zur Wand passt und ein Mehrfaches davon trägt.`,
      ].join('\n'),
  },
};
