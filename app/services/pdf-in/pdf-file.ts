/**
 * The objects of a PDF file. They are looked for in the whole of its text, so that a file is read whose own table of places
 * is damaged or was written in any of its forms; the last object of a number is the one that counts, as in a file that was
 * changed by adding to its end. Objects that are packed into streams are unpacked when one is missing.
 */
import { inflateSync } from 'node:zlib';
import { limits } from '../../../shared/design/limits.ts';
import { afterSpace, type PdfDictionary, type PdfValue, readValue } from './pdf-values.ts';

export interface PdfFile {
  /** The dictionary that all else hangs on; null where there is none. */
  readonly root: PdfDictionary | null;
  /** What a value stands for, where it names an object. */
  resolve(value: PdfValue | undefined): PdfValue;
  /** As `resolve`; null for what is no dictionary. */
  dictionaryOf(value: PdfValue | undefined): PdfDictionary | null;
  /** The unpacked bytes of the stream that a value stands for; null where it is none, or is damaged or too large. */
  bytesOf(value: PdfValue | undefined): Uint8Array | null;
  /** Whether it asks for a password, or hides what it holds. */
  readonly isLocked: boolean;
}

/** Many more than the pattern of the largest chart has. */
const MOST_OBJECTS = 500_000;
/** Bytes of all packed objects together, and what one that can't be unpacked is taken to cost. */
const MOST_UNPACKED = 64 * 1024 * 1024;
const FAILED_COST = 4 * 1024 * 1024;
/** An object that stands for an object that stands for an object. */
const MOST_STEPS = 16;
/** Places where the root may be named, from the end of the file on. */
const MOST_ROOTS = 16;

interface Stream {
  readonly dictionary: PdfDictionary;
  readonly bytes: Uint8Array;
}

interface Place {
  readonly text: string;
  readonly at: number;
}

/** Null where the file has more objects than any that is made in earnest. */
export function openPdfFile(bytes: Uint8Array): PdfFile | null {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  const places = placesIn(text);
  if (!places) return null;
  let packed: Map<number, Place> | null = null;

  function placeOf(object: number): Place | undefined {
    const place = places!.get(object);
    if (place !== undefined) return { text, at: place };
    packed ??= unpackedPlaces(text, streamAt);
    return packed.get(object);
  }

  function resolve(value: PdfValue | undefined): PdfValue {
    let found = value ?? null;
    for (let step = 0; step < MOST_STEPS; step++) {
      if (!isReference(found)) return found;
      const place = placeOf(found.object);
      found = (place && readValue(place.text, place.at)?.value) ?? null;
    }
    return null;
  }

  function dictionaryOf(value: PdfValue | undefined): PdfDictionary | null {
    const found = resolve(value);
    return found instanceof Map ? found : null;
  }

  /** The stream whose dictionary begins at `at`; where its length is wrong, its end is looked for only if `isLost` allows it. */
  function streamAt(at: number, mostBytes: number, isLost = false): Stream | null {
    const read = readValue(text, at);
    if (!read || !(read.value instanceof Map)) return null;
    const dictionary: PdfDictionary = read.value;
    const word = afterSpace(text, read.end);
    if (!text.startsWith('stream', word)) return null;
    const from = word + (text[word + 6] === '\r' ? 8 : 7);
    const length = resolve(dictionary.get('Length'));
    const to = endOfStream(text, from, length, isLost);
    const whole =
      to < 0 ? null : unfiltered(bytes.subarray(from, to), resolve(dictionary.get('Filter')), mostBytes);
    return whole && { dictionary, bytes: whole };
  }

  return {
    root: rootIn(text, dictionaryOf),
    resolve,
    dictionaryOf,
    bytesOf(value) {
      const place = isReference(value) ? places.get(value.object) : undefined;
      return place === undefined ? null : (streamAt(place, limits.fileBytes, true)?.bytes ?? null);
    },
    isLocked: /\/Encrypt[\s<]/.test(text),
  };
}

function isReference(value: PdfValue | undefined): value is { readonly object: number } {
  return typeof value === 'object' && value !== null && 'object' in value;
}

/** By its number, where in the text an object begins; null where there are too many. */
function placesIn(text: string): Map<number, number> | null {
  const places = new Map<number, number>();
  let seen = 0;
  for (let at = text.indexOf(' obj'); at >= 0; at = text.indexOf(' obj', at + 4)) {
    if (++seen > MOST_OBJECTS) return null;
    const head = /(?:^|\D)(\d{1,10})\s\d{1,5}$/.exec(text.slice(Math.max(0, at - 18), at));
    if (head) places.set(Number(head[1]), at + 4);
  }
  return places;
}

function rootIn(text: string, dictionaryOf: PdfFile['dictionaryOf']): PdfDictionary | null {
  let at = text.length;
  for (let tried = 0; tried < MOST_ROOTS; tried++) {
    at = text.lastIndexOf('/Root', at - 1);
    if (at < 0) return null;
    const read = readValue(text, at + 5);
    const root = dictionaryOf(read?.value);
    if (root) return root;
    if (at === 0) return null;
  }
  return null;
}

/** Where its length says, if the word for the end stands there; else, where it may be looked for, at the next such word; or -1. */
function endOfStream(text: string, from: number, length: PdfValue, isLost: boolean): number {
  if (typeof length === 'number' && Number.isInteger(length) && length >= 0) {
    const to = from + length;
    if (text.startsWith('endstream', afterSpace(text, to))) return to;
  }
  return isLost ? text.indexOf('endstream', from) : -1;
}

/** Null for a filter that files are not packed with, and for packed bytes that are damaged or grow beyond `mostBytes`. */
function unfiltered(bytes: Uint8Array, filter: PdfValue, mostBytes: number): Uint8Array | null {
  const [first, ...others] = Array.isArray(filter) ? (filter as readonly PdfValue[]) : [filter];
  if (first === null || first === undefined) return bytes.length <= mostBytes ? bytes : null;
  const isFlate = typeof first === 'object' && 'name' in first && first.name === 'FlateDecode';
  if (!isFlate || others.length > 0) return null;
  try {
    return inflateSync(bytes, { maxOutputLength: mostBytes });
  } catch {
    // Every fault of packed bytes is answered alike: they can't be read.
    return null;
  }
}

/** The places of packed objects (ISO 32000-1, 7.5.7), as far as they can be unpacked. */
function unpackedPlaces(
  text: string,
  streamAt: (at: number, mostBytes: number) => Stream | null,
): Map<number, Place> {
  const places = new Map<number, Place>();
  let left = MOST_UNPACKED;
  for (let at = text.indexOf('/ObjStm'); at >= 0 && left > 0; at = text.indexOf('/ObjStm', at + 7)) {
    const head = Math.max(0, at - MOST_HEAD);
    const begins = text.slice(head, at).lastIndexOf(' obj');
    const stream = begins < 0 ? null : streamAt(head + begins + 4, left);
    left -= stream?.bytes.length ?? FAILED_COST;
    if (!stream) continue;
    const count = stream.dictionary.get('N');
    const first = stream.dictionary.get('First');
    if (typeof count !== 'number' || typeof first !== 'number') continue;
    const inside = Buffer.from(stream.bytes).toString('latin1');
    const numbers = inside
      .slice(0, first)
      .trim()
      .split(/\s+/, 2 * Math.min(count, MOST_OBJECTS))
      .map(Number);
    for (let i = 0; i + 1 < numbers.length && places.size < MOST_OBJECTS; i += 2) {
      places.set(numbers[i]!, { text: inside, at: first + numbers[i + 1]! });
    }
  }
  return places;
}

/** Characters between the beginning of such a stream's object and the word that says what it is. */
const MOST_HEAD = 1000;
