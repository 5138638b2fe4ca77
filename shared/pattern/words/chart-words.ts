/** The chart's own words: its pages, key, marks and map. Rows and cords count from 1. */
import type { Worded } from './worded.ts';

/** From one row or cord to another, both shown. */
export interface Span {
  readonly first: number;
  readonly last: number;
}

/** The first repeat of a band of rows, and how it goes on. */
export interface FramedSpans {
  readonly rows: Span;
  readonly cords: Span;
  /** Whole repeats. */
  readonly times: number;
  /** Cords of the frame that come once more beyond the last whole repeat. */
  readonly rest: Span | null;
}

export type Side = 'left' | 'right' | 'above' | 'below';

interface ChartWords {
  readonly title: string;
  /** Of the chart in symbols that stands beside the one in colour. */
  readonly titleInSymbols: string;
  readonly range: (rows: Span, cords: Span) => string;
  readonly rows: (rows: Span) => string;
  readonly cords: (cords: Span) => string;
  /** What is read to those who can't see the chart. */
  readonly alt: (rows: Span, cords: Span) => string;
  readonly count: (count: number) => string;
  readonly key: string;
  /** Behind the heading of a key whose names are cut short. */
  readonly fullNames: (page: number) => string;
  readonly bare: string;
  readonly lift: string;
  /** Where there is no room for more: the longest first. */
  readonly bareShort: readonly string[];
  readonly liftShort: readonly string[];
  /** What a swatch of the key is, read aloud. */
  readonly symbol: (letter: string) => string;
  readonly liftAlt: string;
  readonly bareAlt: string;
  /** What a frame on the chart holds: a line of the key. */
  readonly framed: (spans: FramedSpans) => string;
  /** What its sign in the key is, read aloud. */
  readonly frameAlt: string;
  /** Knots on this page, behind those of the whole chart. */
  readonly here: (count: string) => string;
  readonly pages: string;
  readonly joins: (page: number) => string;
  /** 'joins page 5 right, 6 below'. */
  readonly joining: (neighbours: readonly (readonly [side: Side, page: number])[]) => string;
  readonly map: {
    readonly title: string;
    readonly introduction: (pages: number) => string;
    readonly alt: (pages: number) => string;
  };
  /** For a row whose words have no room beside the chart, the longest first; `page` is where the written rows begin. */
  readonly writtenOn: (page: number | null) => readonly string[];
  /** Above a chart that has no room for its rows in words; `page` is where the written rows begin. */
  readonly notBeside: (page: number | null) => string;
  /** Bare cells of a row, behind their count. */
  readonly bareInRow: string;
}

export const chartWords: Worded<ChartWords> = {
  en: {
    title: 'Chart',
    titleInSymbols: 'Chart in symbols',
    range: (rows, cords) => `${spanned('row', 'rows', rows)}, ${spanned('cord', 'cords', cords)}`,
    rows: (rows) => spanned('row', 'rows', rows),
    cords: (cords) => spanned('cord', 'cords', cords),
    alt: (rows, cords) =>
      `Chart, ${said('row', 'rows', 'to', rows)}, ${said('cord', 'cords', 'to', cords)}. The written rows tell the same in words.`,
    count: (count) => count.toLocaleString('en'),
    key: 'Key',
    fullNames: (page) => `names in full on page ${page}`,
    bare: 'Bare cord, no knot',
    lift: 'Lift mark: a new yarn',
    bareShort: ['Bare cord', 'Bare'],
    liftShort: ['Lift mark'],
    symbol: (letter) => `symbol ${letter}`,
    liftAlt: 'a small triangle in the cell’s upper corner',
    bareAlt: 'an open diamond',
    framed: ({ rows, cords, times, rest }) =>
      `Framed: ${spanned('cord', 'cords', cords)} of ${spanned('row', 'rows', rows)}, ${times} times across${rest ? `, then ${spanned('cord', 'cords', rest)} once more` : ''}`,
    frameAlt: 'a corner of a double line',
    here: (count) => `· ${count} here`,
    pages: 'Pages',
    joins: (page) => `page ${page}`,
    joining: (neighbours) => {
      const sides = { left: 'left', right: 'right', above: 'above', below: 'below' };
      return neighbours
        .map(([side, page], i) => `${i === 0 ? 'joins page ' : ''}${page} ${sides[side]}`)
        .join(', ');
    },
    map: {
      title: 'Map of the chart',
      introduction: (pages) =>
        `The chart stands on ${pages} pages. Each frame is a page, with its number in it. Neighbouring pages share two rows or two cords, shown pale and hatched on the later one.`,
      alt: (pages) => `The whole chart, cut into ${pages} pages by frames.`,
    },
    writtenOn: (page) =>
      page === null
        ? ['long: follow the chart', 'long']
        : [`long: written on page ${page} and after`, `long: from page ${page}`, `page ${page}`],
    notBeside: (page) =>
      page === null
        ? 'no room for rows beside the chart'
        : `no room for rows beside the chart: written on page ${page} and after`,
    bareInRow: 'bare',
  },
  de: {
    title: 'Zählmuster',
    titleInSymbols: 'Zählmuster in Symbolen',
    range: (rows, cords) => `${spanned('Reihe', 'Reihen', rows)}, ${spanned('Schnur', 'Schnüre', cords)}`,
    rows: (rows) => spanned('Reihe', 'Reihen', rows),
    cords: (cords) => spanned('Schnur', 'Schnüre', cords),
    alt: (rows, cords) =>
      `Zählmuster, ${said('Reihe', 'Reihen', 'bis', rows)}, ${said('Schnur', 'Schnüre', 'bis', cords)}. Die ausgeschriebenen Reihen sagen dasselbe in Worten.`,
    count: (count) => count.toLocaleString('de'),
    key: 'Legende',
    fullNames: (page) => `ganze Namen auf Seite ${page}`,
    bare: 'Freie Schnur, kein Knoten',
    lift: 'Hebemarke: neues Garn',
    bareShort: ['Freie Schnur', 'Frei'],
    liftShort: ['Hebemarke'],
    symbol: (letter) => `Symbol ${letter}`,
    liftAlt: 'ein kleines Dreieck in der oberen Ecke des Kästchens',
    bareAlt: 'eine offene Raute',
    framed: ({ rows, cords, times, rest }) =>
      `Umrahmt: ${spanned('Schnur', 'Schnüre', cords)} der ${spanned('Reihe', 'Reihen', rows)}, ${times}-mal nebeneinander${rest ? `, dann noch einmal ${spanned('Schnur', 'Schnüre', rest)}` : ''}`,
    frameAlt: 'eine Ecke aus einer doppelten Linie',
    here: (count) => `· ${count} hier`,
    pages: 'Seiten',
    joins: (page) => `Seite ${page}`,
    joining: (neighbours) => {
      const sides = { left: 'links', right: 'rechts', above: 'oben', below: 'unten' };
      return neighbours
        .map(
          ([side, page], i) =>
            `${i === 0 ? 'Anschluss ' : ''}${sides[side]} ${i === 0 ? 'Seite ' : ''}${page}`,
        )
        .join(', ');
    },
    map: {
      title: 'Übersicht des Zählmusters',
      introduction: (pages) =>
        `Das Zählmuster steht auf ${pages} Seiten. Jeder Rahmen ist eine Seite und trägt ihre Nummer. Benachbarte Seiten zeigen zwei Reihen oder zwei Schnüre gemeinsam; auf der späteren sind sie blass und schraffiert.`,
      alt: (pages) => `Das ganze Zählmuster, durch Rahmen in ${pages} Seiten geteilt.`,
    },
    writtenOn: (page) =>
      page === null
        ? ['lang: siehe Zählmuster', 'lang']
        : [`lang: ausgeschrieben ab Seite ${page}`, `lang: ab Seite ${page}`, `Seite ${page}`],
    notBeside: (page) =>
      page === null
        ? 'kein Platz für Reihen daneben'
        : `kein Platz für Reihen daneben: ausgeschrieben ab Seite ${page}`,
    bareInRow: 'frei',
  },
};

function spanned(one: string, several: string, { first, last }: Span): string {
  return first === last ? `${one} ${last}` : `${several} ${first}–${last}`;
}

/** As a voice says it: 'rows 1 to 40'. */
function said(one: string, several: string, to: string, { first, last }: Span): string {
  return first === last ? `${one} ${last}` : `${several} ${first} ${to} ${last}`;
}
