/**
 * Calls and answers as JSON lines, for the host that is reached over HTTP. Bytes travel as `{"$bytes": base64}`; the
 * two ends pass in their platform's own base64.
 */
import type { HostEvent, Progress } from './bridge.ts';
import type { Result } from './result.ts';

const BYTES = '$bytes';

/** One line of an answer: progress any number of times, then the result. */
export type AnswerLine = { readonly progress: Progress } | { readonly result: Result<unknown> };

/** One line of the events: a host tells something, or only that it is there. */
export type EventLine = { readonly event: HostEvent } | { readonly alive: true };

/** A value in which every byte array is replaced, ready for JSON. */
export function packBytes(value: unknown, toBase64: (bytes: Uint8Array) => string): unknown {
  if (value instanceof Uint8Array) return { [BYTES]: toBase64(value) };
  if (Array.isArray(value)) return value.map((each) => packBytes(each, toBase64));
  if (typeof value !== 'object' || value === null) return value;
  return mapped(value, (each) => packBytes(each, toBase64));
}

/** A value from JSON with its byte arrays back. `fromBase64` may throw. */
export function unpackBytes(value: unknown, fromBase64: (text: string) => Uint8Array): unknown {
  if (Array.isArray(value)) return value.map((each) => unpackBytes(each, fromBase64));
  if (typeof value !== 'object' || value === null) return value;
  const text: unknown = Object.hasOwn(value, BYTES) ? Reflect.get(value, BYTES) : undefined;
  if (typeof text === 'string' && Object.keys(value).length === 1) return fromBase64(text);
  return mapped(value, (each) => unpackBytes(each, fromBase64));
}

/** `fromEntries` makes a key `__proto__` one of the object's own, which the contract then refuses. */
function mapped(value: object, change: (each: unknown) => unknown): object {
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, change(each)]));
}
