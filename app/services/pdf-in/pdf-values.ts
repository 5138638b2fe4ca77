/**
 * The values that a PDF is written in (ISO 32000-1, 7.3): read from any place of its text, whatever stands there. Nothing in
 * it can cost more than its length: depth and number of values are limited.
 */

export type PdfValue =
  | number
  | boolean
  | null
  | { readonly name: string }
  /** A string's bytes, a character each. */
  | { readonly text: string }
  /** Stands for the object of that number. */
  | { readonly object: number }
  | readonly PdfValue[]
  | PdfDictionary;

export type PdfDictionary = ReadonlyMap<string, PdfValue>;

export interface ReadValue {
  readonly value: PdfValue;
  /** Where in the text the value ends. */
  readonly end: number;
}

/** Files of real programs nest four or five deep. */
const MOST_DEPTH = 32;
/** Values in one object that is asked for: a tree of names has a few. */
const MOST_VALUES = 20_000;
/** Letters of one name or string: ISO 32000-1, annex C. */
const MOST_LETTERS = 32_767;
/** White space and comments between two values. */
const MOST_SPACE = 65_536;

/** The value that begins at `from`, after white space; undefined where there is none, or none within the limits. */
export function readValue(text: string, from: number): ReadValue | undefined {
  let at = from;
  let left = MOST_VALUES;

  function next(depth: number): PdfValue | undefined {
    if (--left < 0 || depth > MOST_DEPTH) return undefined;
    at = afterSpace(text, at);
    const two = text.slice(at, at + 2);
    if (two === '<<') return dictionary(depth);
    switch (two[0]) {
      case '/':
        return { name: readName() };
      case '(':
        return string();
      case '<':
        return hexString();
      case '[':
        return array(depth);
      default:
        return word();
    }
  }

  function dictionary(depth: number): PdfDictionary | undefined {
    const entries = new Map<string, PdfValue>();
    at += 2;
    for (;;) {
      at = afterSpace(text, at);
      if (text.startsWith('>>', at)) {
        at += 2;
        return entries;
      }
      if (text[at] !== '/') return undefined;
      const key = readName();
      const value = next(depth + 1);
      if (value === undefined) return undefined;
      entries.set(key, value);
    }
  }

  function array(depth: number): PdfValue[] | undefined {
    const values: PdfValue[] = [];
    at++;
    for (;;) {
      at = afterSpace(text, at);
      if (text[at] === ']') {
        at++;
        return values;
      }
      const value = next(depth + 1);
      if (value === undefined) return undefined;
      values.push(value);
    }
  }

  function readName(): string {
    const start = ++at;
    const most = Math.min(text.length, start + MOST_LETTERS);
    while (at < most && !/[\s\0()<>[\]{}/%]/.test(text[at]!)) at++;
    return text
      .slice(start, at)
      .replace(/#([0-9A-Fa-f]{2})/g, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16)));
  }

  function string(): PdfValue | undefined {
    let depth = 0;
    let out = '';
    const most = Math.min(text.length, at + MOST_LETTERS);
    for (; at < most; at++) {
      const letter = text[at]!;
      if (letter === '\\') out += escapedLetter();
      else if (letter === '(' && depth++ === 0) continue;
      else if (letter === ')' && --depth === 0) {
        at++;
        return { text: out };
      } else out += letter;
    }
    return undefined;
  }

  /** `at` is on the backslash, and is left on the last letter that belongs to it. */
  function escapedLetter(): string {
    const octal = /^[0-7]{1,3}/.exec(text.slice(at + 1, at + 4))?.[0];
    if (octal) {
      at += octal.length;
      return String.fromCharCode(Number.parseInt(octal, 8) & 255);
    }
    at++;
    const letter = text[at] ?? '';
    return letter === '\r' || letter === '\n' ? '' : (escapes[letter] ?? letter);
  }

  function hexString(): PdfValue | undefined {
    const length = text.slice(at + 1, at + 1 + MOST_LETTERS).indexOf('>');
    if (length < 0) return undefined;
    const digits = text.slice(at + 1, at + 1 + length).replace(/\s/g, '');
    at += length + 2;
    if (!/^[0-9A-Fa-f]*$/.test(digits)) return undefined;
    return { text: (digits.match(/..?/g) ?? []).map(hexLetter).join('') };
  }

  function word(): PdfValue | undefined {
    const found =
      /^(?:(\d{1,10})\s{1,3}\d{1,5}\s{1,3}R\b|[+-]?\d*\.?\d*(?![\w.])|true\b|false\b|null\b)/.exec(
        text.slice(at, at + 40),
      );
    if (!found?.[0]) return undefined;
    at += found[0].length;
    if (found[1] !== undefined) return { object: Number(found[1]) };
    if (found[0] in constants) return constants[found[0]]!;
    const value = Number(found[0]);
    return Number.isNaN(value) ? undefined : value;
  }

  const value = next(0);
  return value === undefined ? undefined : { value, end: at };
}

/** The first place from `at` on that is neither white space nor within a comment. */
export function afterSpace(text: string, at: number): number {
  let to = at;
  const most = Math.min(text.length, at + MOST_SPACE);
  for (;;) {
    if (to >= most) return to;
    const c = text.charCodeAt(to);
    if (c === 0 || c === 9 || c === 10 || c === 12 || c === 13 || c === 32) to++;
    else if (c === 0x25) {
      while (to < most && text[to] !== '\n' && text[to] !== '\r') to++;
    } else return to;
  }
}

const constants: Readonly<Record<string, true | false | null>> = { true: true, false: false, null: null };

const escapes: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

/** A last digit alone stands before a zero. */
function hexLetter(digits: string): string {
  return String.fromCharCode(Number.parseInt(digits.padEnd(2, '0'), 16));
}
