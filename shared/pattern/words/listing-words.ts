/** The text for the shop's page of a pattern. */
import type { PatternPart } from '../../design/pattern-schema.ts';
import { counted } from '../../units/counted.ts';
import type { Worded } from './worded.ts';

/** Figures as they are shown. */
interface ListingFigures {
  readonly title: string;
  /** Of the knotted picture. */
  readonly size: string;
  /** With its fringe; empty where there is none. */
  readonly withFringe: string;
  readonly cords: string;
  readonly rows: string;
  readonly yarns: number;
  readonly knots: string;
  readonly time: string;
}

interface ListingWords {
  readonly heading: (title: string) => string;
  readonly paragraph: (figures: ListingFigures) => string;
  readonly designedBy: (name: string) => string;
  readonly download: string;
  readonly heads: Readonly<
    Record<'files' | 'inside' | 'needs' | 'figures' | 'skill' | 'terms' | 'tags', string>
  >;
  /** What a part gives its buyer; parts that need no praise are absent. */
  readonly inside: Readonly<Partial<Record<PatternPart, string>>>;
  /** What a welcome gives that has no terms of use. */
  readonly welcomeAlone: string;
  readonly yarn: (name: string, length: string, mass: string, skeins: number, skein: string) => string;
  /** `percent`: kept to spare in the skeins; empty: nothing. */
  readonly skeins: (percent: string) => string;
  readonly cord: (thickness: string, length: string) => string;
  readonly dowel: (thickness: string, length: string) => string;
  readonly tools: string;
  readonly figures: (figures: ListingFigures, pieces: string, looseEnds: string) => readonly string[];
  readonly measured: string;
  readonly told: string;
  readonly estimated: string;
  readonly terms: string;
  /** Words that people look for; each at most 20 characters, as shops commonly limit them (common practice, no source). */
  readonly tags: readonly string[];
}

export const listingWords: Worded<ListingWords> = {
  en: {
    heading: (title) => `${title}: pattern for a knotted wall hanging (PDF)`,
    paragraph: ({ title, size, withFringe, cords, rows, yarns }) =>
      `“${title}” is a picture tied in yarn over cotton cords that hang from a dowel. Each square of the chart is one vertical double half hitch, and the rows go back and forth. The knotted picture is about ${size}${withFringe && `, with its fringe ${withFringe} long`}: ${counted(cords, 'cord')}, ${counted(rows, 'row')} and ${yarns === 1 ? 'one yarn' : `${yarns} yarns`}.`,
    designedBy: (name) => `Designed by ${name}.`,
    download:
      'You get files to download; nothing is sent by post, and the finished hanging is not part of it.',
    heads: {
      files: 'Files',
      inside: 'In the pattern',
      needs: 'You need',
      figures: 'In figures',
      skill: 'Skill',
      terms: 'Terms',
      tags: 'Words to be found by',
    },
    inside: {
      welcome: 'What the hanging asks of you, and what you may do with the pattern',
      materials: 'What to buy: yarn in whole skeins, cord, dowel, tools',
      'cut-list': 'A cut list, to the last piece of yarn',
      reading: 'How to read the chart',
      knots: 'The knots drawn step by step',
      chart: 'The chart, with row numbers, arrows, symbols and its key on every page',
      'chart-symbols': 'The chart in symbols as well',
      rows: 'Every row in words, with a box to tick',
      ticks: 'A tick sheet on which you keep your place',
      strands: 'Where every strand begins, goes and ends, row by row',
      finishing: 'Finishing, step by step',
      fringe: 'A template for the fringe',
      care: 'Cautions and care',
    },
    welcomeAlone: 'What the hanging asks of you',
    yarn: (name, length, mass, skeins, skein) =>
      `${name}: ${length}, ${mass}: ${skeins === 1 ? `one skein of ${skein}` : `${skeins} skeins of ${skein}`}`,
    skeins: (percent) =>
      percent === '0'
        ? 'Lengths are what is cut; skeins are whole ones.'
        : `Lengths are what is cut; skeins are whole ones, with ${percent} % more for mistakes and a swatch.`,
    cord: (thickness, length) => `cotton cord, ${thickness} thick: ${length}`,
    dowel: (thickness, length) => `a dowel, ${thickness} thick and at least ${length} long`,
    tools: 'scissors, a tape measure, a comb and a blunt needle',
    figures: ({ knots, time }, pieces, looseEnds) => [
      `${counted(knots, 'knot')}, about ${time} at the dowel`,
      `${counted(pieces, 'piece')} of yarn to cut, ${looseEnds} loose ends at the back`,
    ],
    measured: 'Sizes and lengths are reckoned from a measured swatch.',
    told: 'Sizes and lengths are reckoned from the designer’s own gauge, not measured on a swatch: tie a swatch first.',
    estimated: 'Sizes and lengths are estimates from the thickness of cord and yarn: tie a swatch first.',
    terms:
      'For your own use: print it as often as you need it. Please do not pass the files on or sell them. Hangings that you tie yourself may be sold; name the designer.',
    tags: [
      'wall hanging',
      'knotted picture',
      'pattern pdf',
      'fibre art',
      'half hitch',
      'cotton cord',
      'yarn art',
    ],
  },
  de: {
    heading: (title) => `${title}: Anleitung für einen geknüpften Wandbehang (PDF)`,
    paragraph: ({ title, size, withFringe, cords, rows, yarns }) =>
      `„${title}“ ist ein Bild, aus Garn über Baumwollschnüre geknüpft, die an einem Rundholz hängen. Jedes Kästchen des Zählmusters ist ein senkrechter Rippenknoten, und die Reihen gehen hin und her. Das geknüpfte Bild misst etwa ${size}${withFringe && `, mit Fransen ${withFringe} in der Länge`}: ${counted(cords, 'Schnur', 'Schnüre')}, ${counted(rows, 'Reihe', 'Reihen')} und ${yarns === 1 ? 'ein Garn' : `${yarns} Garne`}.`,
    designedBy: (name) => `Entworfen von ${name}.`,
    download:
      'Sie erhalten Dateien zum Herunterladen; es wird nichts verschickt, und der fertige Wandbehang gehört nicht dazu.',
    heads: {
      files: 'Dateien',
      inside: 'In der Anleitung',
      needs: 'Sie brauchen',
      figures: 'In Zahlen',
      skill: 'Vorkenntnisse',
      terms: 'Nutzungsbedingungen',
      tags: 'Suchwörter',
    },
    inside: {
      welcome: 'Was der Wandbehang verlangt und was Sie mit der Anleitung tun dürfen',
      materials: 'Was zu kaufen ist: Garn in ganzen Strängen, Schnur, Rundholz, Werkzeug',
      'cut-list': 'Der Zuschnitt, bis zum letzten Stück Garn',
      reading: 'Wie man das Zählmuster liest',
      knots: 'Die Knoten, Schritt für Schritt gezeichnet',
      chart: 'Das Zählmuster mit Reihennummern, Pfeilen, Symbolen und der Legende auf jeder Seite',
      'chart-symbols': 'Das Zählmuster auch nur in Symbolen',
      rows: 'Jede Reihe in Worten, mit einem Kästchen zum Abhaken',
      ticks: 'Ein Blatt zum Abhaken, damit Sie immer wissen, wo Sie sind',
      strands: 'Wo jeder Faden beginnt, entlangläuft und endet, Reihe für Reihe',
      finishing: 'Fertigstellen, Schritt für Schritt',
      fringe: 'Eine Schablone für die Fransen',
      care: 'Vorsicht und Pflege',
    },
    welcomeAlone: 'Was der Wandbehang verlangt',
    yarn: (name, length, mass, skeins, skein) =>
      `${name}: ${length}, ${mass}: ${skeins === 1 ? `ein Strang zu ${skein}` : `${skeins} Stränge zu ${skein}`}`,
    skeins: (percent) =>
      percent === '0'
        ? 'Die Längen gelten für das zugeschnittene Garn; gerechnet ist in ganzen Strängen.'
        : `Die Längen gelten für das zugeschnittene Garn; gerechnet ist in ganzen Strängen, mit ${percent} % mehr für Fehler und ein Probestück.`,
    cord: (thickness, length) => `Baumwollschnur, ${thickness} dick: ${length}`,
    dowel: (thickness, length) => `ein Rundholz, ${thickness} dick und mindestens ${length} lang`,
    tools: 'Schere, Maßband, Kamm und eine stumpfe Nadel',
    figures: ({ knots, time }, pieces, looseEnds) => [
      `${knots} Knoten, etwa ${time} Arbeit`,
      `${counted(pieces, 'Stück', 'Stücke')} Garn zuzuschneiden, ${looseEnds} lose Enden auf der Rückseite`,
    ],
    measured: 'Maße und Längen sind aus einem gemessenen Probestück errechnet.',
    told: 'Maße und Längen sind aus der Knotenprobe des Entwurfs errechnet, nicht an einem Probestück gemessen: Knüpfen Sie zuerst ein Probestück.',
    estimated:
      'Maße und Längen sind aus der Dicke von Schnur und Garn geschätzt: Knüpfen Sie zuerst ein Probestück.',
    terms:
      'Für den eigenen Gebrauch: Sie dürfen die Anleitung ausdrucken, so oft Sie sie brauchen. Bitte geben Sie die Dateien nicht weiter und verkaufen Sie sie nicht. Selbst geknüpfte Wandbehänge dürfen verkauft werden; nennen Sie dabei, wer sie entworfen hat.',
    tags: [
      'Wandbehang',
      'geknüpftes Bild',
      'Anleitung PDF',
      'Textilkunst',
      'Rippenknoten',
      'Baumwollschnur',
      'Garnbild',
    ],
  },
};
