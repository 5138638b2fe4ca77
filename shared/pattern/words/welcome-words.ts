/** The welcome: greeting, contents, what the hanging asks for, terms. Its texts are first versions, which a designer may replace. */
import { counted } from '../../units/counted.ts';
import type { Worded } from './worded.ts';

/** Figures as they are shown. */
export interface WelcomeFigures {
  readonly title: string;
  readonly size: string;
  readonly cords: string;
  readonly rows: string;
  readonly knots: string;
  readonly yarns: number;
  readonly time: string;
}

/** Which of the parts that a text points to are in the pattern. */
export interface PartsThere {
  readonly materials: boolean;
  readonly knots: boolean;
}

/** How much the hanging asks of its maker: by its yarns and its knots. */
export type Asking = 'first' | 'some' | 'much';

interface WelcomeWords {
  readonly title: string;
  readonly contents: string;
  readonly glance: string;
  readonly skill: string;
  readonly terms: string;
  /** A line is a paragraph. */
  readonly greeting: (figures: WelcomeFigures, there: PartsThere) => string;
  readonly skillText: (asking: Asking, there: PartsThere) => string;
  readonly figures: {
    readonly picture: string;
    readonly withFringe: string;
    readonly cords: string;
    readonly rows: string;
    readonly knots: string;
    readonly yarns: string;
    readonly time: string;
    readonly about: (time: string) => string;
  };
  readonly timeNote: (there: PartsThere) => string;
}

function firstRead({ materials, knots }: PartsThere): string {
  if (materials && knots) return 'Read the pages on materials and knots first, tie';
  if (materials) return 'Read the page on materials first, tie';
  return knots ? 'Look at the knots first, tie' : 'Tie';
}

function firstReadGerman({ materials, knots }: PartsThere): string {
  if (materials && knots) return 'Lesen Sie zuerst die Seiten über Material und Knoten, knüpfen Sie';
  if (materials) return 'Lesen Sie zuerst die Materialseite, knüpfen Sie';
  return knots ? 'Sehen Sie sich zuerst die Knoten an, knüpfen Sie' : 'Knüpfen Sie';
}

export const welcomeWords: Worded<WelcomeWords> = {
  en: {
    title: 'Welcome',
    contents: 'In this pattern',
    glance: 'At a glance',
    skill: 'What you should know',
    terms: 'Terms of use',
    greeting: ({ title, size, cords, rows, yarns }, there) =>
      `“${title}” is a picture tied in yarn over cotton cords. When it is done it measures about ${size} and hangs from its dowel: ${counted(cords, 'cord')} side by side, ${counted(rows, 'row')} one below the other, ${yarns === 1 ? 'one yarn' : `${yarns} yarns`}.\nThere is only one knot to learn, and the picture grows by it row by row. ${firstRead(there)} a swatch to find your own gauge, and then take all the time you like.`,
    skillText(asking, { knots }) {
      switch (asking) {
        case 'first':
          return `A good first hanging. You need to be able to tie one knot in both directions${knots ? '; it is shown step by step' : ''}. Few colours, and rows that are soon done.`;
        case 'some':
          return `For makers who have tied something small before, or who like to learn by doing. ${knots ? 'The knot is shown step by step; several' : 'Several'} yarns hang at the back at once, and the chart needs to be followed with care.`;
        case 'much':
          return `For makers with patience. The knot is as simple as in any hanging${knots ? ', and it is shown step by step' : ''}; but there are many of them, and many strands to keep in order at the back.`;
      }
    },
    figures: {
      picture: 'Picture',
      withFringe: 'With fringe',
      cords: 'Cords',
      rows: 'Rows',
      knots: 'Knots',
      yarns: 'Yarns',
      time: 'Time',
      about: (time) => `about ${time}`,
    },
    timeNote: ({ materials }) =>
      `Sizes are those of the ${materials ? 'gauge on the materials page' : 'designer’s own gauge'}. Time is an estimate: every hand has its own pace.`,
  },
  de: {
    title: 'Willkommen',
    contents: 'In dieser Anleitung',
    glance: 'Auf einen Blick',
    skill: 'Was Sie können sollten',
    terms: 'Nutzungsbedingungen',
    greeting: ({ title, size, cords, rows, yarns }, there) =>
      `„${title}“ ist ein Bild, das mit Garn über Baumwollschnüre geknüpft wird. Fertig misst es etwa ${size} und hängt an seinem Rundholz: ${counted(cords, 'Schnur', 'Schnüre')} nebeneinander, ${counted(rows, 'Reihe', 'Reihen')} untereinander, ${yarns === 1 ? 'ein Garn' : `${yarns} Garne`}.\nNur ein einziger Knoten ist zu lernen, und mit ihm wächst das Bild Reihe für Reihe. ${firstReadGerman(there)} ein Probestück, um Ihre eigene Knotenprobe zu ermitteln, und nehmen Sie sich dann die Zeit, die Sie brauchen.`,
    skillText(asking, { knots }) {
      switch (asking) {
        case 'first':
          return `Gut geeignet als erster Wandbehang. Ein einziger Knoten in beide Richtungen genügt${knots ? '; er wird Schritt für Schritt gezeigt' : ''}. Es sind wenige Farben, und die Reihen sind schnell geknüpft.`;
        case 'some':
          return `Für alle, die schon etwas Kleines geknüpft haben oder gern beim Knüpfen dazulernen. ${knots ? 'Der Knoten wird Schritt für Schritt gezeigt; hinten hängen mehrere Garne zugleich' : 'Hinten hängen mehrere Garne zugleich'}, und das Zählmuster will aufmerksam gelesen werden.`;
        case 'much':
          return `Für Geduldige. Der Knoten ist so einfach wie in jedem Wandbehang${knots ? ' und wird Schritt für Schritt gezeigt' : ''}; es sind aber viele, und hinten sind viele Fäden in Ordnung zu halten.`;
      }
    },
    figures: {
      picture: 'Bild',
      withFringe: 'Mit Fransen',
      cords: 'Schnüre',
      rows: 'Reihen',
      knots: 'Knoten',
      yarns: 'Garne',
      time: 'Arbeitszeit',
      about: (time) => `etwa ${time}`,
    },
    timeNote: ({ materials }) =>
      `Die Maße gelten für die Knotenprobe ${materials ? 'auf der Materialseite' : 'des Entwurfs'}. Die Arbeitszeit ist geschätzt: Jede Hand hat ihr eigenes Tempo.`,
  },
};
