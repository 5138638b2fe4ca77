/** The fringe and its template. Cords count from 1. */
import type { Fringe } from '../../design/schema.ts';
import type { Worded } from './worded.ts';

interface FringeWords {
  readonly title: string;
  readonly shape: Readonly<Record<Fringe['shape'], string>>;
  readonly straight: (length: string) => string;
  readonly shaped: (shape: string, shortest: string, longest: string) => string;
  /** `paper` is the one that the copy is made for. */
  readonly trueSize: (paper: string) => string;
  /** Of a straight fringe, part of which stands for all. */
  readonly strip: (paper: string) => string;
  readonly tiled: (sheets: number, paper: string) => string;
  /** Beside the bars of 10 cm and 4 in. */
  readonly check: (paper: string) => string;
  readonly inches: string;
  /** How many times smaller than its size it is drawn. */
  readonly toScale: (times: number) => string;
  /** What all of them share: how it is used. */
  readonly use: string;
  readonly lengths: string;
  readonly cord: (number: number) => string;
  readonly cords: (first: number, last: number) => string;
  readonly sheet: (number: number, of: number) => string;
  /** Of a single sheet. */
  readonly inTrueSize: string;
  readonly alt: string;
  readonly tileAlt: (number: number, cords: string) => string;
}

export const fringeWords: Worded<FringeWords> = {
  en: {
    title: 'Fringe template',
    shape: {
      straight: 'straight',
      v: 'a V, longest in the middle',
      'inverted-v': 'an inverted V, shortest in the middle',
      curve: 'a curve, longest in the middle',
      'by-hand': 'in a shape of its own',
    },
    straight: (length) => `The fringe is straight: every cord hangs ${length} below the last row.`,
    shaped: (shape, shortest, longest) =>
      `The fringe is ${shape}: its cords hang from ${shortest} to ${longest} below the last row.`,
    trueSize: (paper) =>
      `The template is in true size on ${paper}: print this page without scaling, cut along the line, and lay the template against the last row.`,
    strip: (paper) =>
      `The strip is in true size on ${paper}: print this page without scaling, cut it out, and move it along the last row.`,
    tiled: (sheets, paper) =>
      sheets === 1
        ? `The template in true size follows on a page of its own: print that on ${paper} without scaling, cut along the line, and lay it against the last row. The picture here is smaller.`
        : `The template in true size follows on ${sheets} sheets of ${paper}, to be printed without scaling. Cut each along its frame, tape them together as the small picture here shows, and cut along the line.`,
    check: (paper) => `On ${paper} without scaling, 10 cm and 4 in are this long:`,
    inches: '4 in',
    toScale: (times) =>
      `The template is drawn at a scale of 1 : ${times}. Measure the cords named below, and let the others follow the line between them.`,
    use: 'Comb the cords and let them hang straight before you cut. Leave the cords a little longer than the line at first: what is cut too short stays short.',
    lengths: 'Lengths below the last row',
    cord: (number) => `cord ${number}`,
    cords: (first, last) => (first === last ? `cord ${first}` : `cords ${first}–${last}`),
    sheet: (number, of) => `sheet ${number} of ${of}`,
    inTrueSize: 'in true size',
    alt: 'The cords of the fringe below the last row, and the line along which they are cut. The lengths below tell the same in figures.',
    tileAlt: (number, cords) => `Sheet ${number} of the template, ${cords}.`,
  },
  de: {
    title: 'Schablone für die Fransen',
    shape: {
      straight: 'gerade',
      v: 'ein V, in der Mitte am längsten',
      'inverted-v': 'ein umgekehrtes V, in der Mitte am kürzesten',
      curve: 'ein Bogen, in der Mitte am längsten',
      'by-hand': 'frei gezeichnet',
    },
    straight: (length) => `Die Fransen sind gerade: Jede Schnur hängt ${length} unter der letzten Reihe.`,
    shaped: (shape, shortest, longest) =>
      `Die Form der Fransen: ${shape}. Die Schnüre hängen ${shortest} bis ${longest} unter der letzten Reihe.`,
    trueSize: (paper) =>
      `Auf ${paper} hat die Schablone Originalgröße: Drucken Sie diese Seite ohne Skalierung, schneiden Sie die Schablone entlang der Linie aus und legen Sie sie an die letzte Reihe an.`,
    strip: (paper) =>
      `Auf ${paper} hat der Streifen Originalgröße: Drucken Sie diese Seite ohne Skalierung, schneiden Sie den Streifen aus und legen Sie ihn Stück für Stück an die letzte Reihe an.`,
    tiled: (sheets, paper) =>
      sheets === 1
        ? `Die Schablone in Originalgröße folgt auf einer eigenen Seite: Drucken Sie diese auf ${paper} ohne Skalierung, schneiden Sie die Schablone entlang der Linie aus und legen Sie sie an die letzte Reihe an. Das Bild hier ist kleiner.`
        : `Die Schablone in Originalgröße folgt auf ${sheets} Blättern ${paper}, die Sie ohne Skalierung drucken. Schneiden Sie jedes Blatt entlang seines Rahmens aus, kleben Sie die Blätter so aneinander, wie das kleine Bild hier zeigt, und schneiden Sie dann entlang der Linie.`,
    check: (paper) => `Auf ${paper} ohne Skalierung sind 10 cm und 4 Zoll so lang:`,
    inches: '4 Zoll',
    toScale: (times) =>
      `Die Schablone ist im Maßstab 1 : ${times.toLocaleString('de')} gezeichnet. Messen Sie die unten genannten Schnüre ab; die anderen folgen der Linie dazwischen.`,
    use: 'Kämmen Sie die Schnüre vor dem Schneiden aus und lassen Sie sie gerade hängen. Schneiden Sie zuerst etwas weniger ab, als die Linie sagt: Was zu kurz ist, bleibt zu kurz.',
    lengths: 'Längen unter der letzten Reihe',
    cord: (number) => `Schnur ${number}`,
    cords: (first, last) => (first === last ? `Schnur ${first}` : `Schnüre ${first}–${last}`),
    sheet: (number, of) => `Blatt ${number} von ${of}`,
    inTrueSize: 'in Originalgröße',
    alt: 'Die Schnüre der Fransen unter der letzten Reihe und die Linie, entlang der sie geschnitten werden. Die Längen darunter sagen dasselbe in Zahlen.',
    tileAlt: (number, cords) => `Blatt ${number} der Schablone, ${cords}.`,
  },
};
