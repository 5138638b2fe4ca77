/**
 * A figure as another language writes it, from how the studio's own formatters give it, which is in English. German writes 1.080
 * and 34,5; 'in' would be read as a word there, so inches are called Zoll. Times are written 9 Std. 10 Min.
 */
import type { Language } from '../design/pattern-schema.ts';

const tellers: Readonly<Record<Language, (figure: string) => string>> = {
  en: (figure) => figure,
  de: (figure) =>
    figure
      .replace(/(?<=\d)[.,](?=\d)/g, (mark) => (mark === '.' ? ',' : '.'))
      .replace(/(?<=\d) in\b/g, ' Zoll')
      .replace(/(?<=\d) h\b/g, ' Std.')
      .replace(/(?<=\d) min\b/g, ' Min.'),
};

export function toldIn(language: Language, figure: string): string {
  return tellers[language](figure);
}
