/** What is said of each step in German. */
import type { CarryStep, Passed, Side } from './step.ts';
import type { StepFigures, StepLanguage } from './step-language.ts';

export const germanSteps: StepLanguage = {
  compact: {
    row({ row, goesRight, lifts, knots }) {
      const heading = `Reihe ${row}, ${direction(goesRight)}`;
      if (knots === 0) return `${heading}: ganz frei, nichts zu knüpfen`;
      return lifts.length === 0 ? heading : `${heading}; anheben ${lifts.join(', ')}`;
    },
    attach: ({ yarn, piece, cord }, { name }) => `${name(yarn)}, Stück ${piece}, an ${cord} ansetzen`,
    knots: ({ yarn, count, from, to }, { name }) => `${count} ${name(yarn)} (${range(from, to)})`,
    carry({ yarn, from, to, inHand }, { name }) {
      if (inHand) return `${name(yarn)} bis ${to.cord} mitführen`;
      if (from.cord === to.cord)
        return `${name(yarn)} aus Reihe ${from.row} an ${to.cord} nach unten mitführen`;
      const where = from.row === to.row ? '' : `Reihe ${from.row}, `;
      return `${name(yarn)} von ${where}Schnur ${from.cord} bis ${to.cord} mitführen`;
    },
    turn: ({ yarn, to }, { name }) => `mit ${name(yarn)} an ${to.cord} umkehren`,
    join: ({ yarn, piece, cord }, { name }) => `${name(yarn)}, Stück ${piece}, an ${cord} anfügen`,
    leave({ yarn, row, until }, { name }) {
      return `${name(yarn)} bis ${until.row === row ? `Schnur ${until.cord}` : `Reihe ${until.row}`} hängen lassen`;
    },
    end: ({ yarn, piece, cord }, { name }) => `${name(yarn)}, Stück ${piece}, an ${cord} beenden`,
  },
  long: {
    row({ row, goesRight, lifts, knots }) {
      if (knots === 0) return `Reihe ${row} ist ganz frei: Es ist nichts zu knüpfen.`;
      const way = `Reihe ${row} geht ${direction(goesRight)}.`;
      if (lifts.length === 0) return way;
      return `${way} Heben Sie vorher ${lifts.length === 1 ? 'die Schnur' : 'die Schnüre'} ${list(lifts.map(String))} an.`;
    },
    attach({ yarn, piece, cord, tailSide, tailMm }, { name, atLeast }) {
      const tail =
        tailMm === 0
          ? ''
          : ` Lassen Sie ein Fadenende von ${atLeast(tailMm)} hinter der Arbeit zurück nach ${sides[tailSide]} zeigen.`;
      return `Setzen Sie Stück ${piece} von ${name(yarn)} an Schnur ${cord} an.${tail}`;
    },
    knots({ yarn, count, from, to }, { name }) {
      if (count === 1) return `Knüpfen Sie 1 Knoten mit ${name(yarn)}, an Schnur ${from}.`;
      return `Knüpfen Sie ${count} Knoten mit ${name(yarn)}, von Schnur ${from} bis Schnur ${to}.`;
    },
    carry: (step, figures) => [wayOfCarry(step, figures), behindWhat(step, figures)].join(' '),
    turn({ yarn, from, to, side, inHand }, { name }) {
      if (inHand)
        return `Führen Sie ${name(yarn)} am ${side === 'left' ? 'linken' : 'rechten'} Rand gerade hinunter in Reihe ${to.row}, an Schnur ${to.cord}.`;
      const hangs = `Nehmen Sie ${name(yarn)} auf, das an Schnur ${from.cord} der Reihe ${from.row} hängt`;
      return `${hangs}, und führen Sie es gerade hinunter in Reihe ${to.row}.`;
    },
    join({ yarn, oldPiece, piece, after, cord, oldTailSide, tailSide, tailMm }, { name, atLeast }) {
      const tails =
        tailMm === 0
          ? ''
          : ` Lassen Sie Fadenenden von ${atLeast(tailMm)} hinter der Arbeit: Das alte zeigt weiter nach ${sides[oldTailSide]}, das neue zurück nach ${sides[tailSide]}.`;
      return `Stück ${oldPiece} von ${name(yarn)} endet nach Schnur ${after}: Fügen Sie Stück ${piece} an Schnur ${cord} an.${tails}`;
    },
    leave({ yarn, cord, row, until }, { name }) {
      const when =
        until.row === row
          ? `bis diese Reihe zu Schnur ${until.cord} kommt`
          : `bis Reihe ${until.row}, wo es an Schnur ${until.cord} weitergeht`;
      return `Lassen Sie ${name(yarn)} hinter Schnur ${cord} hängen, ${when}.`;
    },
    end({ yarn, piece, cord, tailSide, tailMm }, { name, atLeast }) {
      const tail =
        tailMm === 0
          ? ''
          : ` Lassen Sie ein Fadenende von ${atLeast(tailMm)} hinter der Arbeit weiter nach ${sides[tailSide]} zeigen.`;
      return `Stück ${piece} von ${name(yarn)} endet nach Schnur ${cord}.${tail}`;
    },
  },
};

const sides: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };

function wayOfCarry({ yarn, from, to, cords, rows, inHand }: CarryStep, { name }: StepFigures): string {
  const side: Side = to.cord < from.cord ? 'left' : 'right';
  const down = rows === 0 ? [] : [rows === 1 ? '1 Reihe nach unten' : `${rows} Reihen nach unten`];
  const across = cords === 0 ? [] : [`${cords === 1 ? '1 Schnur' : `${cords} Schnüre`} nach ${sides[side]}`];
  const way = `hinter der Arbeit ${list([...down, ...across])} bis Schnur ${to.cord}`;
  if (inHand) return `Führen Sie ${name(yarn)} ${way} mit.`;
  const row = rows === 0 ? 'dieser Reihe' : `der Reihe ${from.row}`;
  return `Nehmen Sie ${name(yarn)} auf, das an Schnur ${from.cord} ${row} hängt, und führen Sie es ${way} mit.`;
}

function behindWhat({ behind, ahead, lengthMm }: CarryStep, { name, about }: StepFigures): string {
  const takes = `braucht etwa ${about(lengthMm)} Garn.`;
  if (behind.length === 0) return `Das ${takes}`;
  const knots = list(behind.map((each) => passedWords(each, name)));
  return ahead
    ? `Es wird hinter ${knots} liegen, die noch zu knüpfen sind, und ${takes}`
    : `Es geht hinter ${knots} vorbei und ${takes}`;
}

function passedWords({ yarn, count, from, to }: Passed, name: StepFigures['name']): string {
  return `${count} ${name(yarn)} (${range(from, to)})`;
}

function direction(goesRight: boolean): string {
  return goesRight ? 'von links nach rechts' : 'von rechts nach links';
}

function range(from: number, to: number): string {
  return from === to ? String(from) : `${from}-${to}`;
}

/** '1', '1 und 2', '1, 2 und 3'. */
function list(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)!}`;
}
