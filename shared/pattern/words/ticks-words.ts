/** The tick sheet. */
import type { Worded } from './worded.ts';

interface TicksWords {
  readonly title: string;
  readonly introduction: string;
  /** After the last box of a line: what is tied by then. */
  readonly done: (percent: number, time: string) => string;
}

export const ticksWords: Worded<TicksWords> = {
  en: {
    title: 'Tick sheet',
    introduction:
      'A box for each row, ten to a line. Tick it when the row is tied; at the end of the line stands how much of the hanging is tied by then, and about how long that takes.',
    done: (percent, time) => `${percent} %, ${time}`,
  },
  de: {
    title: 'Abhakliste',
    introduction:
      'Ein Kästchen für jede Reihe, zehn in einer Zeile. Haken Sie es ab, wenn die Reihe geknüpft ist; am Ende der Zeile steht, wie viel vom Wandbehang dann geknüpft ist und wie lange das etwa dauert.',
    done: (percent, time) => `${percent} %, ${time}`,
  },
};
