/** The page of the strands. What is done with them is said by the languages of the steps. */
import { rowsWords } from './rows-words.ts';
import type { Worded } from './worded.ts';

interface StrandsWords {
  readonly title: string;
  readonly introduction: string;
  /** Added where long names are shortened. */
  readonly shortened: string;
  readonly row: (row: number) => string;
}

export const strandsWords: Worded<StrandsWords> = {
  en: {
    title: 'Strands, row by row',
    introduction:
      'Where a piece is attached, where a strand that hangs is taken up again and carried or turned, where a piece is joined, and where it ends. A number after ‘at’ or ‘to’ is a cord. In rows that are not told, the yarn in hand goes on by itself; the chart shows the knots.',
    shortened: rowsWords.en.shortened,
    row: (row) => `Row ${row}:`,
  },
  de: {
    title: 'Fäden, Reihe für Reihe',
    introduction:
      'Wo ein Stück angesetzt wird, wo ein hängender Faden wieder aufgenommen und mitgeführt wird oder umkehrt, wo ein Stück angefügt wird und wo es endet. Eine Zahl nach „an“ oder „bis“ ist eine Schnur. In Reihen, die hier fehlen, geht das Garn in der Hand einfach weiter; die Knoten zeigt das Zählmuster.',
    shortened: rowsWords.de.shortened,
    row: (row) => `Reihe ${row}:`,
  },
};
