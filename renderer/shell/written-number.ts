/** Numbers as people write them into fields: 4,8 and 4.8. */

export interface NumberRange {
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
}

/** NaN where it is none. */
export function writtenNumber(text: string): number {
  return text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.'));
}

/** To three places, as fields show them. */
export function shownNumber(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** What is wrong with what was written, in a sentence; empty where it can be used. */
export function numberFault(text: string, { min, max, whole = false }: NumberRange): string {
  const number = writtenNumber(text);
  if (!Number.isFinite(number) || (whole && !Number.isInteger(number)))
    return whole ? 'Write a whole number.' : 'Write a number.';
  if (number < min) return `At least ${shownNumber(min)}.`;
  return number > max ? `At most ${shownNumber(max)}.` : '';
}
