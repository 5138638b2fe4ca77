/** Figures as a pattern prints them: in its units, and as its language writes numbers. */
import type { Language } from '../../design/pattern-schema.ts';
import { formatCutLength } from '../../units/cut-length.ts';
import { formatLength } from '../../units/length.ts';
import { formatMass } from '../../units/mass.ts';
import { formatMoney } from '../../units/money.ts';
import { decimal } from '../../units/round.ts';
import { formatThickness } from '../../units/thickness.ts';
import { formatTime } from '../../units/time.ts';
import { toldIn } from '../../units/told-in.ts';
import type { Units } from '../../units/units.ts';
import { formatYarnLength } from '../../units/yarn-length.ts';

export interface Figures {
  /** Of hangings and dowels. */
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
  /** How long a piece, a cord or a tail is cut: never less. */
  cutLength(mm: number): string;
  /** What is saved or left over: never more. */
  spareYarnLength(mm: number): string;
  /** The same, never less than what must be bought or cut. */
  readonly enough: Pick<Figures, 'length' | 'yarnLength' | 'mass'>;
}

export function figuresIn(units: Units, language: Language): Figures {
  const told = (figure: string) => toldIn(language, figure);
  const enough = { enough: true } as const;
  return {
    length: (mm) => told(formatLength(mm, units)),
    yarnLength: (mm) => told(formatYarnLength(mm, units)),
    mass: (g) => told(formatMass(g, units)),
    thickness: (mm) => told(formatThickness(mm, units)),
    time: (seconds) => told(formatTime(seconds)),
    count: (count) => told(count.toLocaleString('en')),
    money: (amount, currency) => told(formatMoney(amount, currency)),
    number: (value) => told(decimal(value, 0.1)),
    cutLength: (mm) => told(formatCutLength(mm, units)),
    spareYarnLength: (mm) => told(formatYarnLength(mm, units, { spare: true })),
    enough: {
      length: (mm) => told(formatLength(mm, units, enough)),
      yarnLength: (mm) => told(formatYarnLength(mm, units, enough)),
      mass: (g) => told(formatMass(g, units, enough)),
    },
  };
}
