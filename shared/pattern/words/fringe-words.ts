/** The fringe and its template. Cords count from 1. */
import type { Fringe } from '../../design/schema.ts';
import type { Worded } from './worded.ts';

interface FringeWords {
  readonly title: string;
  readonly shape: Readonly<Record<Fringe['shape'], string>>;
  readonly straight: (length: string) => string;
  readonly shaped: (shape: string, shortest: string, longest: string) => string;
  readonly trueSize: string;
  readonly tiled: (sheets: number) => string;
  /** How many times smaller than its size it is drawn. */
  readonly toScale: (times: number) => string;
  /** What all of them share: how it is used. */
  readonly use: string;
  readonly lengths: string;
  readonly cord: (number: number) => string;
  readonly cords: (first: number, last: number) => string;
  readonly sheet: (number: number, of: number) => string;
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
      'by-hand': 'drawn by hand',
    },
    straight: (length) => `The fringe is straight: every cord hangs ${length} below the last row.`,
    shaped: (shape, shortest, longest) =>
      `The fringe is ${shape}: its cords hang from ${shortest} to ${longest} below the last row.`,
    trueSize: 'The template is in true size: cut along the line, and lay it against the last row.',
    tiled: (sheets) =>
      `The template in true size follows on ${sheets} sheets. Cut each along its frame, tape them together side by side as the small picture shows, and cut along the line.`,
    toScale: (times) =>
      `The template is drawn at a scale of 1 : ${times}. Measure the cords named below, and let the others follow the line between them.`,
    use: 'Comb the cords and let them hang straight before you cut. Cut a little less than the line says at first: what is cut too short stays short.',
    lengths: 'Lengths below the last row',
    cord: (number) => `cord ${number}`,
    cords: (first, last) => (first === last ? `cord ${first}` : `cords ${first}–${last}`),
    sheet: (number, of) => `sheet ${number} of ${of}`,
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
      'by-hand': 'von Hand gezeichnet',
    },
    straight: (length) => `Die Fransen sind gerade: jede Schnur hängt ${length} unter der letzten Reihe.`,
    shaped: (shape, shortest, longest) =>
      `Die Form der Fransen: ${shape}. Die Schnüre hängen ${shortest} bis ${longest} unter der letzten Reihe.`,
    trueSize:
      'Die Schablone hat die wahre Größe: Schneiden Sie sie entlang der Linie aus und legen Sie sie an die letzte Reihe an.',
    tiled: (sheets) =>
      `Die Schablone in wahrer Größe folgt auf ${sheets} Blättern. Schneiden Sie jedes entlang seines Rahmens aus, kleben Sie die Blätter nach dem kleinen Bild aneinander und schneiden Sie dann entlang der Linie.`,
    toScale: (times) =>
      `Die Schablone ist im Maßstab 1 : ${times.toLocaleString('de')} gezeichnet. Messen Sie die unten genannten Schnüre ab; die anderen folgen der Linie dazwischen.`,
    use: 'Kämmen Sie die Schnüre vor dem Schneiden aus und lassen Sie sie gerade hängen. Schneiden Sie zuerst etwas weniger ab, als die Linie sagt: Was zu kurz ist, bleibt zu kurz.',
    lengths: 'Längen unter der letzten Reihe',
    cord: (number) => `Schnur ${number}`,
    cords: (first, last) => (first === last ? `Schnur ${first}` : `Schnüre ${first}–${last}`),
    sheet: (number, of) => `Blatt ${number} von ${of}`,
    alt: 'Die Schnüre der Fransen unter der letzten Reihe und die Linie, an der sie geschnitten werden. Die Längen darunter sagen dasselbe in Zahlen.',
    tileAlt: (number, cords) => `Blatt ${number} der Schablone, ${cords}.`,
  },
};
