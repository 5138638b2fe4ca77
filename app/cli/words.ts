/** Reads options of the kinds that several verbs have. */
import { type Paper, papers } from '../../shared/pattern/page/papers.ts';
import { good, type Result } from '../../shared/result.ts';
import type { Units } from '../../shared/units/units.ts';
import { usage, type Words } from './cli-verb.ts';

export function needed({ values }: Words, name: string): Result<string> {
  const value = values[name];
  return typeof value === 'string' && value !== '' ? good(value) : usage(`--${name} is missing.`);
}

/** A whole number from 1 to `most`; null where the option is absent. */
export function count({ values }: Words, name: string, most: number): Result<number | null> {
  const text = values[name];
  if (text === undefined) return good(null);
  const value = Number(text);
  return typeof text === 'string' && /^[0-9]+$/.test(text) && value >= 1 && value <= most
    ? good(value)
    : usage(`--${name} takes a whole number from 1 to ${most}, not “${text}”.`);
}

/** JSON is all that these verbs can print, and the option says so. */
export function asJson({ values }: Words): Result<null> {
  return values.json === true ? good(null) : usage('This verb prints JSON: add --json.');
}

export function paperOf({ values: { paper } }: Words): Result<Paper> {
  return isPaper(paper) ? good(paper) : usage(`--paper takes a4 or letter, not “${paper}”.`);
}

function isPaper(paper: unknown): paper is Paper {
  return typeof paper === 'string' && Object.hasOwn(papers, paper);
}

/** Both kinds where the option is absent: who buys a pattern may live anywhere. */
export const unitsOption = { units: { type: 'string', default: 'both' } } as const;

export const unitsUse = '[--units metric|us|both]';

export const unitsDetail = '--units UNITS       metric, us, or both (where absent)';

export function unitsOf(words: Words): Result<Units> {
  return choice(words, 'units', ['metric', 'us', 'both']);
}

/** One of a few words. */
export function choice<const T extends string>(
  { values }: Words,
  name: string,
  allowed: readonly T[],
): Result<T> {
  const value = values[name];
  const known = allowed.find((each) => each === value);
  return known === undefined
    ? usage(`--${name} takes ${allowed.join(' or ')}, not “${value}”.`)
    : good(known);
}
