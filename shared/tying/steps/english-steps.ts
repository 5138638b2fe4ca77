/** What is said of each step in English. Everything that a translator would change stands in this file. */
import { counted } from '../../units/counted.ts';
import type { CarryStep, Passed, Side } from './step.ts';
import type { StepFigures, StepLanguage } from './step-language.ts';

export const englishSteps: StepLanguage = {
  compact: {
    row({ row, goesRight, lifts, knots }) {
      const heading = `Row ${row}, ${direction(goesRight)}`;
      if (knots === 0) return `${heading}: all bare, nothing to tie`;
      return lifts.length === 0 ? heading : `${heading}; lift ${lifts.join(', ')}`;
    },
    attach: ({ yarn, piece, cord }, { name }) => `attach ${name(yarn)}, piece ${piece}, at ${cord}`,
    knots: ({ yarn, count, from, to }, { name }) => `${count} ${name(yarn)} (${range(from, to)})`,
    carry({ yarn, from, to, inHand }, { name }) {
      if (inHand) return `carry ${name(yarn)} on to ${to.cord}`;
      if (from.cord === to.cord) return `carry ${name(yarn)} down from row ${from.row} at ${to.cord}`;
      const where = from.row === to.row ? '' : `row ${from.row}, `;
      return `carry ${name(yarn)} from ${where}cord ${from.cord} to ${to.cord}`;
    },
    turn: ({ yarn, to }, { name }) => `turn ${name(yarn)} at ${to.cord}`,
    join: ({ yarn, piece, cord }, { name }) => `join ${name(yarn)}, piece ${piece}, at ${cord}`,
    leave({ yarn, row, until }, { name }) {
      return `leave ${name(yarn)} until ${until.row === row ? `cord ${until.cord}` : `row ${until.row}`}`;
    },
    end: ({ yarn, piece, cord }, { name }) => `end ${name(yarn)}, piece ${piece}, at ${cord}`,
  },
  long: {
    row({ row, goesRight, lifts, knots }) {
      if (knots === 0) return `Row ${row} is all bare: there is nothing to tie.`;
      const way = `Row ${row} goes from ${direction(goesRight)}.`;
      if (lifts.length === 0) return way;
      return `${way} Before you tie it, lift ${lifts.length === 1 ? 'cord' : 'cords'} ${list(lifts.map(String))}.`;
    },
    attach({ yarn, piece, cord, tailSide, tailMm }, { name, atLeast }) {
      const tail =
        tailMm === 0
          ? ''
          : ` Let a tail of ${atLeast(tailMm)} point back to the ${tailSide}, behind the work.`;
      return `Attach piece ${piece} of ${name(yarn)} at cord ${cord}.${tail}`;
    },
    knots({ yarn, count, from, to }, { name }) {
      if (count === 1) return `Tie 1 knot with ${name(yarn)}, at cord ${from}.`;
      return `Tie ${count} knots with ${name(yarn)}, from cord ${from} to cord ${to}.`;
    },
    carry: (step, figures) => [wayOfCarry(step, figures), behindWhat(step, figures)].join(' '),
    turn({ yarn, from, to, side, inHand }, { name }) {
      if (inHand)
        return `On the ${side}, turn ${name(yarn)} straight down to row ${to.row}, at cord ${to.cord}.`;
      const hangs = `Take up the ${name(yarn)} that hangs at cord ${from.cord} of row ${from.row}`;
      return `${hangs}, and turn it straight down to row ${to.row}.`;
    },
    join({ yarn, oldPiece, piece, after, cord, oldTailSide, tailSide, tailMm }, { name, atLeast }) {
      const tails =
        tailMm === 0
          ? ''
          : ` Leave tails of ${atLeast(tailMm)} behind the work: the old one points on to the ${oldTailSide}, the new one back to the ${tailSide}.`;
      return `Piece ${oldPiece} of ${name(yarn)} ends after cord ${after}: join piece ${piece} at cord ${cord}.${tails}`;
    },
    leave({ yarn, cord, row, until }, { name }) {
      const when = until.row === row ? 'this row reaches' : `row ${until.row}, where it goes on at`;
      return `Leave ${name(yarn)} hanging behind cord ${cord} until ${when} cord ${until.cord}.`;
    },
    end({ yarn, piece, cord, tailSide, tailMm }, { name, atLeast }) {
      const tail =
        tailMm === 0 ? '' : ` Let a tail of ${atLeast(tailMm)} point on to the ${tailSide}, behind the work.`;
      return `Piece ${piece} of ${name(yarn)} ends after cord ${cord}.${tail}`;
    },
  },
};

function wayOfCarry({ yarn, from, to, cords, rows, inHand }: CarryStep, { name }: StepFigures): string {
  const side: Side = to.cord < from.cord ? 'left' : 'right';
  const down = rows === 0 ? [] : [`${counted(rows, 'row')} down`];
  const across = cords === 0 ? [] : [`${counted(cords, 'cord')} to the ${side}`];
  const way = `behind the work, ${list([...down, ...across])}, to cord ${to.cord}.`;
  if (inHand) return `Carry ${name(yarn)} on ${way}`;
  const row = rows === 0 ? 'this row' : `row ${from.row}`;
  return `Take up the ${name(yarn)} that hangs at cord ${from.cord} of ${row}, and carry it ${way}`;
}

function behindWhat({ behind, ahead, lengthMm }: CarryStep, { name, about }: StepFigures): string {
  const takes = `takes about ${about(lengthMm)} of yarn.`;
  if (behind.length === 0) return `It ${takes}`;
  const knots = list(behind.map((each) => passedWords(each, name)));
  const where = ahead ? `It will lie behind ${knots}, still to be tied,` : `It passes behind ${knots},`;
  return `${where} and ${takes}`;
}

function passedWords({ yarn, count, from, to }: Passed, name: StepFigures['name']): string {
  return `${count} ${name(yarn)} (${range(from, to)})`;
}

function direction(goesRight: boolean): string {
  return goesRight ? 'left to right' : 'right to left';
}

function range(from: number, to: number): string {
  return from === to ? String(from) : `${from}-${to}`;
}

/** '1', '1 and 2', '1, 2 and 3'. */
function list(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;
}
