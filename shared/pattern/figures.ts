/**
 * Figures as a pattern prints them: in its units, and as its language writes numbers. English writes 1,080 and 34.5, German 1.080
 * and 34,5; 'in' would be read as a word in German, so inches are called Zoll there.
 */
import type { Language } from '../design/pattern-schema.ts';
import { formatLength } from '../units/length.ts';
import { formatMass } from '../units/mass.ts';
import { formatMoney } from '../units/money.ts';
import { formatThickness } from '../units/thickness.ts';
import { formatTime } from '../units/time.ts';
import type { Units } from '../units/units.ts';
import { formatYarnLength } from '../units/yarn-length.ts';

export interface Figures {
  /** Of hangings, dowels, cords and tails. */
  length(mm: number): string;
  yarnLength(mm: number): string;
  mass(g: number): string;
  thickness(mm: number): string;
  time(seconds: number): string;
  count(count: number): string;
  /** `currency` by ISO 4217, where it is told. */
  money(amount: number, currency?: string): string;
  /** To one place behind the point. */
  number(value: number): string;
  /** The same, never less than what must be bought or cut. */
  readonly enough: Pick<Figures, 'length' | 'yarnLength' | 'mass'>;
}

export function figuresIn(units: Units, language: Language): Figures {
  const told = toldIn[language];
  const enough = { enough: true } as const;
  return {
    length: (mm) => told(formatLength(mm, units)),
    yarnLength: (mm) => told(formatYarnLength(mm, units)),
    mass: (g) => told(formatMass(g, units)),
    thickness: (mm) => told(formatThickness(mm, units)),
    time: (seconds) => told(formatTime(seconds)),
    count: (count) => told(count.toLocaleString('en')),
    money: (amount, currency) => told(formatMoney(amount, currency)),
    number: (value) => told(String(Number(value.toFixed(1)))),
    enough: {
      length: (mm) => told(formatLength(mm, units, enough)),
      yarnLength: (mm) => told(formatYarnLength(mm, units, enough)),
      mass: (g) => told(formatMass(g, units, enough)),
    },
  };
}

/** From the figure as the studio's own formatters give it. */
const toldIn: Readonly<Record<Language, (figure: string) => string>> = {
  en: (figure) => figure,
  de: (figure) =>
    figure
      .replace(/(?<=\d)[.,](?=\d)/g, (mark) => (mark === '.' ? ',' : '.'))
      .replace(/(?<=\d) in\b/g, ' Zoll'),
};
