/**
 * One row of a layer as text, and back: stretches of equal cells, left to right, `COUNT` followed by a yarn's id,
 * by `.` for empty or by `-` for bare, with one space between: `12y1 3y2 25.`
 *
 * Reading is strict, so that a slip of one character is told and not drawn. Only stretches of the same yarn side by
 * side are let through: a person who edits the file by hand makes them, and writing merges them.
 */
import { BARE, EMPTY } from './codes.ts';
import type { Yarn } from './schema.ts';

const SPACE = 0x20;
const MINUS = 0x2d;
const DOT = 0x2e;
const ZERO = 0x30;
const NINE = 0x39;
const Y = 0x79;

/** For each byte whether a cell may hold it: 1 for the yarns' codes, empty and bare. */
export function codesAllowed(yarns: readonly Pick<Yarn, 'id'>[]): Uint8Array {
  const allowed = new Uint8Array(256);
  allowed[EMPTY] = 1;
  allowed[BARE] = 1;
  for (const { id } of yarns) allowed[Number(id.slice(1))] = 1;
  return allowed;
}

/**
 * The codes of a row of `columns` cells; or, as a text, what is wrong with it, to follow 'row 12 …'. `allowed` is
 * made by `codesAllowed`.
 */
export function readRow(text: string, columns: number, allowed: Uint8Array): Uint8Array | string {
  const row = new Uint8Array(columns);
  let cells = 0;
  let at = 0;
  for (;;) {
    const tokenAt = at;
    let count = 0;
    for (let c = text.charCodeAt(at); c >= ZERO && c <= NINE; c = text.charCodeAt(++at)) {
      if (at - tokenAt === 7) return `has more cells than a chart can have, at character ${tokenAt + 1}`;
      count = count * 10 + c - ZERO;
    }
    if (at === tokenAt) return unreadable(text, at);
    if (text.charCodeAt(tokenAt) === ZERO)
      return `has a count that begins with 0, at character ${tokenAt + 1}`;

    let code = EMPTY;
    const mark = text.charCodeAt(at++);
    if (mark === Y) {
      const idAt = at;
      for (let c = text.charCodeAt(at); c >= ZERO && c <= NINE && at - idAt < 3; c = text.charCodeAt(++at)) {
        code = code * 10 + c - ZERO;
      }
      if (at === idAt) return unreadable(text, at);
      const known = code < BARE && code !== EMPTY && allowed[code] === 1 && text.charCodeAt(idAt) !== ZERO;
      if (!known) return `names yarn ${text.slice(idAt - 1, at)}, which is not in the design's list of yarns`;
    } else if (mark === MINUS) code = BARE;
    else if (mark !== DOT) return unreadable(text, at - 1);

    if (cells + count <= columns) row.fill(code, cells, cells + count);
    cells += count;
    if (at === text.length) break;
    if (text.charCodeAt(at) !== SPACE) return unreadable(text, at);
    at++;
  }
  return cells === columns ? row : `has ${cells} ${cells === 1 ? 'cell' : 'cells'} instead of ${columns}`;
}

/**
 * The canonical text of a row: neighbouring cells of one code are always one stretch. Characters are gathered as
 * bytes, five times as fast as joining texts where every cell differs from the next.
 */
export function writeRow(row: Uint8Array): string {
  // A stretch takes at most a digit for each of its cells, and `y`, three digits and a space.
  const chars = new Uint8Array(row.length * 6);
  let at = 0;
  for (let from = 0; from < row.length; ) {
    const code = row[from]!;
    let to = from + 1;
    while (to < row.length && row[to] === code) to++;
    if (from > 0) chars[at++] = SPACE;
    at = digits(chars, at, to - from);
    if (code === EMPTY) chars[at++] = DOT;
    else if (code === BARE) chars[at++] = MINUS;
    else {
      chars[at++] = Y;
      at = digits(chars, at, code);
    }
    from = to;
  }
  return Reflect.apply(String.fromCharCode, null, chars.subarray(0, at));
}

/** Puts a whole number's digits at `at`; the place after them. */
function digits(chars: Uint8Array, at: number, number: number): number {
  let places = 1;
  for (let power = 10; power <= number; power *= 10) places++;
  for (let i = at + places - 1, rest = number; i >= at; i--, rest = Math.floor(rest / 10)) {
    chars[i] = ZERO + (rest % 10);
  }
  return at + places;
}

function unreadable(text: string, at: number): string {
  if (text.length === 0) return 'is empty';
  return at >= text.length ? 'breaks off at its end' : `can't be read at character ${at + 1}`;
}
