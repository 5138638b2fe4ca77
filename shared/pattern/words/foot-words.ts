/** The foot of each page. */
import type { Worded } from './worded.ts';

interface FootWords {
  readonly page: (number: number, of: number) => string;
  readonly checkLine: string;
  /** Heads a page on which something goes on. */
  readonly continued: (title: string) => string;
  readonly preparedFor: (name: string) => string;
}

export const footWords: Worded<FootWords> = {
  en: {
    page: (number, of) => `page ${number} of ${of}`,
    checkLine: '50 mm when printed at full size',
    continued: (title) => `${title}, continued`,
    preparedFor: (name) => `prepared for ${name}`,
  },
  de: {
    page: (number, of) => `Seite ${number} von ${of}`,
    checkLine: '50 mm bei Druck in Originalgröße',
    continued: (title) => `${title}, Fortsetzung`,
    preparedFor: (name) => `angefertigt für ${name}`,
  },
};
