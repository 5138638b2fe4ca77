/** Numbers as people write them into fields: 4,8 and 4.8, and as a ruler in inches has them, 13 1/2. */

export interface NumberRange {
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  /** Behind the figures where it is told what is possible: 'cm', 'cords'. */
  readonly unit?: string;
}

/** NaN where it is none. */
export function writtenNumber(text: string): number {
  const written = text.trim();
  const ruler = /^(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)$/.exec(written);
  if (ruler) return Number(ruler[1] ?? 0) + Number(ruler[2]) / Number(ruler[3]);
  return plain.test(written) ? Number(written.replace(',', '.').replace('−', '-')) : Number.NaN;
}

/** Digits with at most one decimal mark; nothing that only programs read as a number, such as 0x10 or 1e2. */
const plain = /^[+\-−]?(?:\d+[.,]?\d*|[.,]\d+)$/;

/** One thousand to some people, and one to others: 1,250. A point is no such riddle, for fields show it as the decimal mark. */
const riddle = /^[1-9]\d{0,2},\d{3}$/;

/** To three places, as fields show them. */
export function shownNumber(value: number): string {
  return String(inPlaces(value, Math.round));
}

/** What is wrong with what was written, and what is possible, in a sentence; empty where it can be used. */
export function numberFault(text: string, { min, max, whole = false, unit = '' }: NumberRange): string {
  const number = writtenNumber(text);
  if (riddle.test(text.trim()))
    return `A comma may part thousands or decimals: write ${text.trim().replace(',', '')} or ${shownNumber(number)}.`;
  // What is told to be possible is possible: limits are rounded inwards.
  const least = inPlaces(min, Math.ceil);
  const most = inPlaces(max, Math.floor);
  const behind = unit && ` ${unit}`;
  if (!Number.isFinite(number))
    return `Write a ${whole ? 'whole number' : 'number'} from ${shownNumber(least)} to ${shownNumber(most)}${behind}.`;
  if (number < least) return `That is too little: write at least ${shownNumber(least)}${behind}.`;
  if (number > most) return `That is too much: write at most ${shownNumber(most)}${behind}.`;
  return whole && !Number.isInteger(number)
    ? `Only a whole number will do: ${shownNumber(Math.floor(number))} or ${shownNumber(Math.ceil(number))}${behind}.`
    : '';
}

/** Less than this share of a figure is the noise of binary fractions. */
const noise = 1e-9;

function inPlaces(value: number, round: (value: number) => number): number {
  const thousandths = value * 1000;
  const whole = Math.round(thousandths);
  return (Math.abs(thousandths - whole) < noise * Math.max(1, whole) ? whole : round(thousandths)) / 1000;
}
