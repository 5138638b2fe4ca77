import type { Pin } from './schema.ts';

const keys = ['kind', 'row', 'cord', 'toRow', 'toCord'] as const;

/** Whether two lists of pins decide the same, in the same order. */
export function samePins(a: readonly Pin[], b: readonly Pin[]): boolean {
  return a.length === b.length && a.every((pin, i) => keys.every((key) => pin[key] === b[i]![key]));
}
