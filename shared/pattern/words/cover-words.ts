/** The cover. */
import { counted } from '../../units/counted.ts';
import type { Worded } from './worded.ts';

interface CoverWords {
  /** For the outline. */
  readonly page: string;
  /** What it is, above the title. */
  readonly kind: string;
  /** Of the chart. */
  readonly extent: (cords: number, rows: number) => string;
  readonly designedBy: (name: string) => string;
  /** Above the figures. */
  readonly size: string;
  readonly cordsAndRows: string;
  readonly yarns: string;
  readonly time: string;
  readonly about: (time: string) => string;
  /** The picture, for those who can't see it. */
  readonly alt: (figures: { title: string; cords: number; rows: number; yarns: readonly string[] }) => string;
  readonly photograph: (title: string) => string;
  readonly mark: (name: string) => string;
}

export const coverWords: Worded<CoverWords> = {
  en: {
    page: 'Cover',
    kind: 'Pattern for a knotted wall hanging',
    extent: (cords, rows) => `${counted(cords, 'cord')}, ${counted(rows, 'row')}`,
    designedBy: (name) => `designed by ${name}`,
    size: 'knotted picture',
    cordsAndRows: 'cords × rows',
    yarns: 'yarns',
    time: 'time',
    about: (time) => `about ${time}`,
    alt: ({ title, cords, rows, yarns }) =>
      `“${title}”, finished and hanging from its dowel: a picture of ${counted(cords, 'cord')} and ${counted(rows, 'row')} in ${yarns.join(', ')}, with its fringe below.`,
    photograph: (title) => `Photograph of the hanging “${title}”.`,
    mark: (name) => `The mark of ${name}.`,
  },
  de: {
    page: 'Titelseite',
    kind: 'Anleitung für einen geknüpften Wandbehang',
    extent: (cords, rows) => `${counted(cords, 'Schnur', 'Schnüre')}, ${counted(rows, 'Reihe', 'Reihen')}`,
    designedBy: (name) => `entworfen von ${name}`,
    size: 'geknüpftes Bild',
    cordsAndRows: 'Schnüre × Reihen',
    yarns: 'Garne',
    time: 'Arbeitszeit',
    about: (time) => `etwa ${time}`,
    alt: ({ title, cords, rows, yarns }) =>
      `„${title}“, fertig am Rundholz: ein Bild aus ${counted(cords, 'Schnur', 'Schnüren')} und ${counted(rows, 'Reihe', 'Reihen')} in ${yarns.join(', ')}, darunter die Fransen.`,
    photograph: (title) => `Foto des Wandbehangs „${title}“.`,
    mark: (name) => `Das Zeichen von ${name}.`,
  },
};
