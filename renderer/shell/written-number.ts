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
  return written === '' ? Number.NaN : Number(written.replace(',', '.'));
}

/** To three places, as fields show them. */
export function shownNumber(value: number): string {
  return String(inPlaces(value, Math.round));
}

/** What is wrong with what was written, and what is possible, in a sentence; empty where it can be used. */
export function numberFault(text: string, { min, max, whole = false, unit = '' }: NumberRange): string {
  const number = writtenNumber(text);
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
