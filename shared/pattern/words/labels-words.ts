/** Labels for the bundles of cut pieces. Figures come as they are shown. */
import type { Worded } from './worded.ts';

interface LabelsWords {
  readonly title: string;
  readonly introduction: string;
  /** One row, or those from one to another. */
  readonly rows: (rows: string, areSeveral: boolean) => string;
  /** 'piece 2'. */
  readonly piece: (number: string) => string;
  /** '5 pieces: 1, 4–6, 9'. */
  readonly pieces: (count: string, numbers: string) => string;
  /** Which of the labels of one bundle it is, from 1. */
  readonly part: (number: number, of: number) => string;
}

export const labelsWords: Worded<LabelsWords> = {
  en: {
    title: 'Labels for bundles',
    introduction:
      'Cut the pieces of a label together, tie them into a bundle and hang the label on it. The numbers count the pieces of a yarn in the order in which they are attached.',
    rows: (rows, areSeveral) => `${areSeveral ? 'rows' : 'row'} ${rows}`,
    piece: (number) => `piece ${number}`,
    pieces: (count, numbers) => `${count} pieces: ${numbers}`,
    part: (number, of) => `${number === 1 ? '' : 'continued, '}label ${number} of ${of}`,
  },
  de: {
    title: 'Schilder für die Bündel',
    introduction:
      'Schneiden Sie die Stücke eines Schildes zusammen zu, binden Sie sie zu einem Bündel und hängen Sie das Schild daran. Die Nummern zählen die Stücke eines Garns in der Reihenfolge, in der sie angesetzt werden.',
    rows: (rows, areSeveral) => `${areSeveral ? 'Reihen' : 'Reihe'} ${rows}`,
    piece: (number) => `Stück ${number}`,
    pieces: (count, numbers) => `${count} Stücke: ${numbers}`,
    part: (number, of) => `${number === 1 ? '' : 'Fortsetzung, '}Schild ${number} von ${of}`,
  },
};
