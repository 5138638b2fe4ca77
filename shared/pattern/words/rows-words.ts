/** The written rows, in whole words and as short as they can be. */
import { englishRows, type RowWords } from '../../tying/rows/written-rows.ts';
import type { Worded } from './worded.ts';

interface RowsWords extends RowWords {
  readonly title: string;
  readonly lift: string;
  /** Added where long names are shortened. */
  readonly shortened: string;
  /** How the short form is read. */
  readonly compact: string;
  /** Added where rows in the short form hold repeats. */
  readonly repeated: string;
}

export const rowsWords: Worded<RowsWords> = {
  en: {
    ...englishRows,
    title: 'Written rows',
    lift: 'Cords after ‘lift’ are lifted before the row is tied: a new yarn begins at each of them.',
    shortened: 'Long names of yarns are shortened here, and end in the letter of their symbol.',
    compact:
      'First stands the row, with an arrow the way it goes, as beside the chart. Then, in tying order, how many knots of which yarn, by its symbol in the key; – is bare. After the semicolon stand the cords to lift before the row is tied.',
    repeated:
      'What stands in brackets is tied over and over, as many times as the figure before them says; the cords to lift are those of the whole row.',
  },
  de: {
    title: 'Ausgeschriebene Reihen',
    lift: 'Die Schnüre nach „anheben“ werden angehoben, bevor die Reihe geknüpft wird: An jeder beginnt ein neues Garn.',
    shortened: 'Lange Namen von Garnen sind hier gekürzt und enden mit dem Buchstaben ihres Symbols.',
    compact:
      'Zuerst steht die Reihe, mit einem Pfeil in ihrer Richtung, wie am Zählmuster. Dann kommt in der Knüpffolge, wie viele Knoten in welchem Garn, mit seinem Symbol aus der Legende; – ist frei. Nach dem Strichpunkt stehen die Schnüre, die vor dem Knüpfen der Reihe angehoben werden.',
    repeated:
      'Was in Klammern steht, wird immer wieder geknüpft, so oft, wie die Zahl davor sagt; anzuheben sind die Schnüre der ganzen Reihe.',
    heading: (row, goesRight) =>
      `Reihe ${row}, ${goesRight ? 'von links nach rechts' : 'von rechts nach links'}`,
    allBare: 'ganz frei, nichts zu knüpfen',
    bare: 'frei',
    lifted: (cord) => `anheben ${cord}`,
  },
};
