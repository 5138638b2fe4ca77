/** The tick sheet. Figures come as they are shown. */
import type { Worded } from './worded.ts';

interface TicksWords {
  readonly title: string;
  readonly introduction: string;
  /** Added where rows without a knot are among them. */
  readonly bareRows: string;
  readonly rows: string;
  /** Heads of what is reached at the end of a line. */
  readonly knots: string;
  readonly share: string;
  readonly time: string;
  /** What is done before row 1, and after the last row. */
  readonly before: (time: string) => string;
  readonly after: (time: string, hasLooseEnds: boolean) => string;
}

export const ticksWords: Worded<TicksWords> = {
  en: {
    title: 'Tick sheet',
    introduction:
      'Tick a row when it is tied. The arrows say which way the rows below them go. At the end of each line stands what is reached there: knots, their share of the whole, and about how long it takes up to there.',
    bareRows: 'A row without a box has no knot.',
    rows: 'rows',
    knots: 'knots tied',
    share: 'share',
    time: 'time so far',
    before: (time) => `Before row 1: cut and mount the cords, about ${time}. The times below include it.`,
    after: (time, hasLooseEnds) =>
      hasLooseEnds
        ? `After the last row: loose ends, fringe and finishing, about ${time}.`
        : `After the last row: the fringe and finishing, about ${time}.`,
  },
  de: {
    title: 'Reihen zum Abhaken',
    introduction:
      'Haken Sie eine Reihe ab, wenn sie geknüpft ist. Die Pfeile zeigen, wohin die Reihen unter ihnen gehen. Am Ende jeder Zeile steht, was dort erreicht ist: die Knoten, ihr Anteil am Ganzen und die ungefähre Zeit bis dahin.',
    bareRows: 'Eine Reihe ohne Kästchen hat keinen Knoten.',
    rows: 'Reihen',
    knots: 'Knoten',
    share: 'Anteil',
    time: 'Zeit bis hier',
    before: (time) =>
      `Vor Reihe 1, etwa ${time}: Schnüre zuschneiden und einhängen. In den Zeiten unten ist das mitgezählt.`,
    after: (time, hasLooseEnds) =>
      hasLooseEnds
        ? `Nach der letzten Reihe, etwa ${time}: lose Enden, Fransen und Fertigstellen.`
        : `Nach der letzten Reihe, etwa ${time}: Fransen und Fertigstellen.`,
  },
};
