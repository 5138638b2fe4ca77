/**
 * What a design file's text may cost, asked before any of it is parsed: bytes, nesting, values, the length of one
 * string. One pass over the characters that knows where strings begin and end; it takes no memory.
 */
import { type Problem, problem } from '../result.ts';
import { limits } from './limits.ts';

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const LOWER_U = 0x75;
const OPENERS = new Set([0x5b, 0x7b]);
const CLOSERS = new Set([0x5d, 0x7d]);
const SEPARATORS = new Set([0x2c, 0x3a]);

/** Null where the text is within the limits. Whether it is JSON at all is not asked here. */
export function textProblem(text: string): Problem | null {
  if (text.length > limits.fileBytes) return tooManyBytes;
  let bytes = 0;
  let depth = 0;
  let values = 0;
  let stringAt = -1;
  let stringChars = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    bytes += utf8Bytes(c);
    if (stringAt >= 0) {
      if (c === QUOTE) {
        stringAt = -1;
        continue;
      }
      stringChars++;
      if (stringChars > limits.stringChars) return tooLongString;
      if (c === BACKSLASH) {
        const escaped = text.charCodeAt(i + 1) === LOWER_U ? 5 : 1;
        bytes += escaped;
        i += escaped;
      }
    } else if (c === QUOTE) {
      stringAt = i;
      stringChars = 0;
    } else if (c < 0x2c) {
      // White space, by far the most common, is none of what follows.
    } else if (OPENERS.has(c)) {
      values++;
      if (++depth > limits.fileDepth) return tooDeep;
    } else if (CLOSERS.has(c)) depth--;
    else if (SEPARATORS.has(c)) values++;
    if (values > limits.fileValues) return tooManyValues;
  }
  return bytes > limits.fileBytes ? tooManyBytes : null;
}

/** Bytes of one UTF-16 unit; both halves of a pair together make the four that the character takes. */
function utf8Bytes(unit: number): number {
  if (unit < 0x80) return 1;
  if (unit < 0x800) return 2;
  return unit >= 0xd800 && unit <= 0xdfff ? 2 : 3;
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
