/**
 * What a design file's text may cost, asked before any of it is parsed: bytes, nesting, values, the length of one
 * string. One pass that knows where strings begin and end; it takes no memory.
 */
import { type Problem, problem } from '../result.ts';
import { limits } from './limits.ts';

const QUOTE = 0x22;
const COMMA = 0x2c;
const COLON = 0x3a;
const OPEN_BRACKET = 0x5b;
const BACKSLASH = 0x5c;
const CLOSE_BRACKET = 0x5d;
const LOWER_U = 0x75;
const OPEN_BRACE = 0x7b;
const CLOSE_BRACE = 0x7d;

/** Null where the text is within the limits. Whether it is JSON at all is not asked here. */
export function textProblem(text: string): Problem | null {
  if (isOver(text, limits.fileBytes)) return tooManyBytes;
  let depth = 0;
  let values = 0;
  let strings = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === QUOTE) {
      const { end, chars } = stringFrom(text, i + 1);
      if (chars > limits.stringChars) return tooLongString;
      if (++strings > limits.fileValues) return tooManyValues;
      i = end;
    } else if (c === COMMA || c === COLON) values++;
    else if (c === OPEN_BRACE || c === OPEN_BRACKET) {
      values++;
      if (++depth > limits.fileDepth) return tooDeep;
    } else if (c === CLOSE_BRACE || c === CLOSE_BRACKET) {
      // More closed than opened is no JSON: the parser refuses it at this place, and reads no further.
      if (--depth < 0) return null;
    }
    if (values > limits.fileValues) return tooManyValues;
  }
  return null;
}

/**
 * Where the closing quote of the string that begins at `from` stands, and how many characters the string has once its
 * escapes are read; where it has no end, or none soon enough, where the search ended. A plain loop, on purpose: a
 * search for the quote and the next escape by `indexOf` is moved out of the loop by the engine, and takes minutes.
 */
function stringFrom(text: string, from: number): { end: number; chars: number } {
  // An escape takes at most six characters, so that whatever goes on beyond this is longer than the longest string.
  const last = Math.min(text.length, from + 6 * limits.stringChars + 6);
  let escaped = 0;
  let end = from;
  for (let c = text.charCodeAt(end); c !== QUOTE && end < last; c = text.charCodeAt(end)) {
    const more = c !== BACKSLASH ? 0 : text.charCodeAt(end + 1) === LOWER_U ? 5 : 1;
    escaped += more;
    end += 1 + more;
  }
  return { end, chars: end - from - escaped };
}

/** True where the text takes more than `maxBytes` in UTF-8. It takes one to three for each of its UTF-16 units. */
function isOver(text: string, maxBytes: number): boolean {
  if (text.length > maxBytes) return true;
  if (text.length * 3 <= maxBytes) return false;
  let bytes = text.length;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit < 0x80) continue;
    // Each half of a pair counts two: together they make the four bytes of their character.
    bytes += unit < 0x800 || (unit >= 0xd800 && unit <= 0xdfff) ? 1 : 2;
  }
  return bytes > maxBytes;
}

/** Said of bytes that were not read yet, too. */
export const tooManyBytes = tooLarge(
  `is larger than ${limits.fileBytes / 1024 / 1024} MiB, the most that Larkrow opens`,
);
const tooDeep = tooLarge(`nests its values deeper than ${limits.fileDepth} levels, which no design does`);
const tooManyValues = tooLarge(`holds more than ${limits.fileValues} values, which no design does`);
const tooLongString = tooLarge(
  `holds a text of more than ${limits.stringChars} characters, the most that Larkrow opens`,
);

function tooLarge(what: string): Problem {
  return problem(
    'too-large',
    `The file ${what}. Choose another file, or make this one smaller where it was made.`,
  ).problem;
}
