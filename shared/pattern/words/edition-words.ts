/** Editions of a pattern: how they are named, and what changed since the one before. */
import { counted } from '../../units/counted.ts';
import type { Change, PatternText, Stretch } from '../editions/changes-since.ts';
import { partWords } from './part-words.ts';
import type { Worded } from './worded.ts';

interface EditionWords {
  /** In the foot of every page; `date` as ISO 8601 writes it. */
  readonly name: (number: number, date: string) => string;
  readonly errata: string;
  readonly changesHead: (number: number) => string;
  readonly noChange: string;
  readonly change: (change: Change) => string;
}

const rowsOf = (rows: readonly Stretch[]) =>
  rows.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(', ');

/** What the texts of a pattern that a designer writes are called. */
export const patternTexts: Worded<Readonly<Record<PatternText, string>>> = {
  en: {
    welcome: 'The welcome',
    terms: 'The text of the terms',
    skill: 'The text on skill',
    reading: 'The text on reading the chart',
    order: 'The order of work',
    finishing: 'The text on finishing',
    care: 'The text on care',
    cautions: 'The text of the further cautions',
    notes: 'The text of the notes',
  },
  de: {
    welcome: 'Der Text zur Begrüßung',
    terms: 'Der Text der Nutzungsbedingungen',
    skill: 'Der Text über die Vorkenntnisse',
    reading: 'Der Text zum Lesen des Zählmusters',
    order: 'Der Text zum Vorgehen',
    finishing: 'Der Text zum Fertigstellen',
    care: 'Der Text zur Pflege',
    cautions: 'Der Text der weiteren Hinweise zur Vorsicht',
    notes: 'Der Text der Anmerkungen',
  },
};

export const editionWords: Worded<EditionWords> = {
  en: {
    name: (number, date) => `Edition ${number}, ${date}`,
    errata: 'Errata',
    changesHead: (number) => `Changed since edition ${number}`,
    noChange: 'Nothing has changed.',
    change(change) {
      switch (change.kind) {
        case 'title':
          return `The title was “${change.from}” and is “${change.to}” now.`;
        case 'size':
          return `The chart had ${counted(change.from.columns, 'cord')} and ${counted(change.from.rows, 'row')}, and has ${counted(change.to.columns, 'cord')} and ${counted(change.to.rows, 'row')} now.`;
        case 'cells':
          return `${change.count === 1 ? '1 cell of the chart is' : `${change.count.toLocaleString('en')} cells of the chart are`} tied otherwise, in ${change.rows.length === 1 && change.rows[0]!.from === change.rows[0]!.to ? 'row' : 'rows'} ${rowsOf(change.rows)}.`;
        case 'start-corner':
          return 'Row 1 begins at the other side.';
        case 'yarn-added':
          return `The yarn “${change.name}” is new.`;
        case 'yarn-gone':
          return `The yarn “${change.name}” is gone.`;
        case 'yarn-renamed':
          return `The yarn “${change.from}” is called “${change.to}” now.`;
        case 'yarn-colour':
          return `The yarn “${change.name}” has another colour.`;
        case 'yarn-symbol':
          return `The yarn “${change.name}” has another symbol.`;
        case 'yarn-figures':
          return `The yarn “${change.name}” has another thickness or skein.`;
        case 'cord':
          return 'The cord is another one.';
        case 'dowel':
          return 'The dowel is another one.';
        case 'fringe':
          return 'The fringe is cut otherwise.';
        case 'gauge':
          return 'The gauge was measured anew: sizes and lengths are other ones.';
        case 'tying':
          return 'Working length, tails or carries are other ones, and so are the pieces to cut.';
        case 'margin':
          return 'The margin of yarn is another one.';
        case 'designer':
          return 'Another designer is named.';
        case 'fitted':
          return 'Pieces are cut to measure where all were of one length, or the other way round.';
        case 'rates':
          return 'The hours are reckoned otherwise.';
        case 'parts-added':
          return `Printed besides: ${change.parts.map((part) => partWords.en[part]).join(', ')}.`;
        case 'parts-gone':
          return `Printed no more: ${change.parts.map((part) => partWords.en[part]).join(', ')}.`;
        case 'parts-order':
          return 'The parts stand in another order.';
        case 'text':
          return `${patternTexts.en[change.text]} reads otherwise.`;
        case 'cover':
          return 'The cover shows another picture.';
        case 'copy':
          return 'How a copy is usually printed is set otherwise; copies of the edition can still be printed either way.';
        case 'plan':
          return 'The strands are planned otherwise; the picture is the same.';
      }
    },
  },
  de: {
    name: (number, date) => `${number}. Ausgabe, ${date}`,
    errata: 'Berichtigungen',
    changesHead: (number) => `Geändert seit der ${number}. Ausgabe`,
    noChange: 'Nichts hat sich geändert.',
    change(change) {
      switch (change.kind) {
        case 'title':
          return `Der Titel war „${change.from}“ und ist jetzt „${change.to}“.`;
        case 'size':
          return `Das Zählmuster hatte ${counted(change.from.columns, 'Schnur', 'Schnüre')} und ${counted(change.from.rows, 'Reihe', 'Reihen')} und hat jetzt ${counted(change.to.columns, 'Schnur', 'Schnüre')} und ${counted(change.to.rows, 'Reihe', 'Reihen')}.`;
        case 'cells':
          return `${change.count === 1 ? '1 Kästchen des Zählmusters wird' : `${change.count.toLocaleString('de')} Kästchen des Zählmusters werden`} anders geknüpft, in ${change.rows.length === 1 && change.rows[0]!.from === change.rows[0]!.to ? 'Reihe' : 'den Reihen'} ${rowsOf(change.rows)}.`;
        case 'start-corner':
          return 'Reihe 1 beginnt auf der anderen Seite.';
        case 'yarn-added':
          return `Das Garn „${change.name}“ ist neu.`;
        case 'yarn-gone':
          return `Das Garn „${change.name}“ entfällt.`;
        case 'yarn-renamed':
          return `Das Garn „${change.from}“ heißt jetzt „${change.to}“.`;
        case 'yarn-colour':
          return `Das Garn „${change.name}“ hat eine andere Farbe.`;
        case 'yarn-symbol':
          return `Das Garn „${change.name}“ hat ein anderes Symbol.`;
        case 'yarn-figures':
          return `Das Garn „${change.name}“ hat eine andere Dicke oder einen anderen Strang.`;
        case 'cord':
          return 'Die Schnur ist eine andere.';
        case 'dowel':
          return 'Das Rundholz ist ein anderes.';
        case 'fringe':
          return 'Die Fransen werden anders geschnitten.';
        case 'gauge':
          return 'Die Knotenprobe wurde neu gemessen: Maße und Längen sind andere.';
        case 'tying':
          return 'Arbeitslänge, Fadenenden oder Mitführen sind anders eingestellt; damit ändern sich auch die Stücke, die zugeschnitten werden.';
        case 'margin':
          return 'Die Zugabe an Garn ist eine andere.';
        case 'designer':
          return 'Für den Entwurf steht ein anderer Name.';
        case 'fitted':
          return 'Die Stücke werden nach Maß statt gleich lang zugeschnitten, oder umgekehrt.';
        case 'rates':
          return 'Die Arbeitszeit wird anders berechnet.';
        case 'parts-added':
          return `Zusätzlich gedruckt: ${change.parts.map((part) => partWords.de[part]).join(', ')}.`;
        case 'parts-gone':
          return `Nicht mehr gedruckt: ${change.parts.map((part) => partWords.de[part]).join(', ')}.`;
        case 'parts-order':
          return 'Die Teile stehen in anderer Reihenfolge.';
        case 'text':
          return `${patternTexts.de[change.text]} lautet anders.`;
        case 'cover':
          return 'Die Titelseite zeigt ein anderes Bild.';
        case 'copy':
          return 'Wie ein Exemplar gewöhnlich gedruckt wird, ist anders eingestellt; die Ausgabe lässt sich weiterhin auf jede Weise drucken.';
        case 'plan':
          return 'Die Fäden sind anders geplant; das Bild ist dasselbe.';
      }
    },
  },
};
